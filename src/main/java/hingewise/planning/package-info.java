/** What to confirm or try next, and in what order. */
@NullMarked
package hingewise.planning;

import org.jspecify.annotations.NullMarked;
