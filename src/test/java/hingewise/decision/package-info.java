@NullMarked
package hingewise.decision;

import org.jspecify.annotations.NullMarked;
