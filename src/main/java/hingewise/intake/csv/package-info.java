/** Sheets of listings as rows of text: comma-separated, of any length, in and out. */
@NullMarked
package hingewise.intake.csv;

import org.jspecify.annotations.NullMarked;
