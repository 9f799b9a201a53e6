@NullMarked
package hingewise.offer;

import org.jspecify.annotations.NullMarked;
