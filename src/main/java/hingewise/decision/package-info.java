/** What to do next when the state is unknown, when looking costs and trying may cure or harm. Knows no phones. */
@NullMarked
package hingewise.decision;

import org.jspecify.annotations.NullMarked;
