/** Looks at a whole rule book for what can be read and yet is probably not meant so, and for how firmly it stands. */
@NullMarked
package hingewise.review;

import org.jspecify.annotations.NullMarked;
