@NullMarked
package hingewise.simulation;

import org.jspecify.annotations.NullMarked;
