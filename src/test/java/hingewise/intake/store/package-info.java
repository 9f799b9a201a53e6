@NullMarked
package hingewise.intake.store;

import org.jspecify.annotations.NullMarked;
