/**
 * Exact inference over networks of yes/no variables: noisy-OR links with leaks, small tables, hard and weighted
 * evidence. Knows nothing of phones.
 */
@NullMarked
package hingewise.inference;

import org.jspecify.annotations.NullMarked;
