/** Plain words about bad input: quoting what cannot be trusted, and guessing what was meant. */
@NullMarked
package hingewise.plain;

import org.jspecify.annotations.NullMarked;
