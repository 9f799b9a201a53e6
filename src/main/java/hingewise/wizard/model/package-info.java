/** What the wizard knows and does: state and commands. It knows no control, so it is tested without a window. */
@NullMarked
package hingewise.wizard.model;

import org.jspecify.annotations.NullMarked;
