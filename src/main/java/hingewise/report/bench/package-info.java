/** The sheet to work by at the bench, in words. */
@NullMarked
package hingewise.report.bench;

import org.jspecify.annotations.NullMarked;
