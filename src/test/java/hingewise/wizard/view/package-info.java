@NullMarked
package hingewise.wizard.view;

import org.jspecify.annotations.NullMarked;
