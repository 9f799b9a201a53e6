/** Documents of a case: every sentence stands on what was recorded. */
@NullMarked
package hingewise.report;

import org.jspecify.annotations.NullMarked;
