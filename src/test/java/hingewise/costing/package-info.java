@NullMarked
package hingewise.costing;

import org.jspecify.annotations.NullMarked;
