@NullMarked
package hingewise.listings;

import org.jspecify.annotations.NullMarked;
