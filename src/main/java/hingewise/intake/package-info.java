/** What a listing says: words of a seller become suggested claims, never entries by themselves. */
@NullMarked
package hingewise.intake;

import org.jspecify.annotations.NullMarked;
