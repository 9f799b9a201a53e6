/** The door: decides between window and terminal. */
@NullMarked
package hingewise;

import org.jspecify.annotations.NullMarked;
