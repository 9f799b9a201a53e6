@NullMarked
package hingewise.intake;

import org.jspecify.annotations.NullMarked;
