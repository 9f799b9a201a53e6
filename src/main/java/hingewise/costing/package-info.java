/** What a repair costs. Money is exact. */
@NullMarked
package hingewise.costing;

import org.jspecify.annotations.NullMarked;
