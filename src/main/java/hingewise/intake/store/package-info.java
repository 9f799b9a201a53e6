/** What reading has learned, kept with the program so that it need not be learned at every start. */
@NullMarked
package hingewise.intake.store;

import org.jspecify.annotations.NullMarked;
