@NullMarked
package hingewise.wizard.model;

import org.jspecify.annotations.NullMarked;
