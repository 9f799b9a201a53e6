@NullMarked
package hingewise.rulebook.yaml;

import org.jspecify.annotations.NullMarked;
