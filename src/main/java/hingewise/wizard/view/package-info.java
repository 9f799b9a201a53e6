/** The wizard's window. Every view draws the model's state and turns what a person does into the model's commands. */
@NullMarked
package hingewise.wizard.view;

import org.jspecify.annotations.NullMarked;
