/** Everything the program knows about a case, computed in one pass. */
@NullMarked
package hingewise.assessment;

import org.jspecify.annotations.NullMarked;
