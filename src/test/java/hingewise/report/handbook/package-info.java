@NullMarked
package hingewise.report.handbook;

import org.jspecify.annotations.NullMarked;
