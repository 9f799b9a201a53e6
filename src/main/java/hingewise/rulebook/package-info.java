/** The rule book as immutable records: what faults there are, how they show, how to confirm and cure them. */
@NullMarked
package hingewise.rulebook;

import org.jspecify.annotations.NullMarked;
