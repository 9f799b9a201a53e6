/** Price books as comma-separated files. */
@NullMarked
package hingewise.costing.csv;

import org.jspecify.annotations.NullMarked;
