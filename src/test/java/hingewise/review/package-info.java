@NullMarked
package hingewise.review;

import org.jspecify.annotations.NullMarked;
