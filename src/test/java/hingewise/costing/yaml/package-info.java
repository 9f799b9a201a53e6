@NullMarked
package hingewise.costing.yaml;

import org.jspecify.annotations.NullMarked;
