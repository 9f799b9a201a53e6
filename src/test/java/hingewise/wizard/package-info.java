@NullMarked
package hingewise.wizard;

import org.jspecify.annotations.NullMarked;
