/** A sheet of listings, ranked by what buying each is expected to bring. */
@NullMarked
package hingewise.intake.sheet;

import org.jspecify.annotations.NullMarked;
