/** The shop's own figures as a file. */
@NullMarked
package hingewise.costing.yaml;

import org.jspecify.annotations.NullMarked;
