/** Independent recomputations that the tests hold the engine against. */
@NullMarked
package hingewise.oracle;

import org.jspecify.annotations.NullMarked;
