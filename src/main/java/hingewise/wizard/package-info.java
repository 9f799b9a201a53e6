/** The wizard: a window that asks one question at a time and shows what the answers mean. */
@NullMarked
package hingewise.wizard;

import org.jspecify.annotations.NullMarked;
