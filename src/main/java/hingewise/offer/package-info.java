/** The most to pay for a phone, and what moves it. */
@NullMarked
package hingewise.offer;

import org.jspecify.annotations.NullMarked;
