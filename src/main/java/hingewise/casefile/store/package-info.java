/**
 * Case files on disk: a versioned JSON format, read with every doubt spoken out and written so that a file is either
 * the old one or the new one, never half of one.
 */
@NullMarked
package hingewise.casefile.store;

import org.jspecify.annotations.NullMarked;
