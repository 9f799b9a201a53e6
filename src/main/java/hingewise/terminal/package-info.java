/** The commands of the terminal: thin, over services that know no command line. */
@NullMarked
package hingewise.terminal;

import org.jspecify.annotations.NullMarked;
