/** Text from outside, made fit to be shown. */
@NullMarked
package hingewise.plain;

import org.jspecify.annotations.NullMarked;
