@NullMarked
package hingewise.inference;

import org.jspecify.annotations.NullMarked;
