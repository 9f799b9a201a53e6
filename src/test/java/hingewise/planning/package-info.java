@NullMarked
package hingewise.planning;

import org.jspecify.annotations.NullMarked;
