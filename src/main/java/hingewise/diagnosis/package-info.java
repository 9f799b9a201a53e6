/** From a rule book and a case to ranked causes with reasons that sum to the result. */
@NullMarked
package hingewise.diagnosis;

import org.jspecify.annotations.NullMarked;
