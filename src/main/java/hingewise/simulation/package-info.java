/** How plans do on phones drawn from a rule book, beside plain habits. */
@NullMarked
package hingewise.simulation;

import org.jspecify.annotations.NullMarked;
