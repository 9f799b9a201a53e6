/** The rule book as a book to read: the same articles as linked pages for a browser and as text for a terminal. */
@NullMarked
package hingewise.report.handbook;

import org.jspecify.annotations.NullMarked;
