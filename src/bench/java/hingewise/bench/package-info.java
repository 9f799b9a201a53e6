/** Speed of the engine beside general-purpose libraries, measured in one run. */
@NullMarked
package hingewise.bench;

import org.jspecify.annotations.NullMarked;
