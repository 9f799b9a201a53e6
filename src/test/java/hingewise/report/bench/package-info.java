@NullMarked
package hingewise.report.bench;

import org.jspecify.annotations.NullMarked;
