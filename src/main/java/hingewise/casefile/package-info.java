/** What was claimed, seen and done to one phone, in order. A case never changes: recording makes a new one. */
@NullMarked
package hingewise.casefile;

import org.jspecify.annotations.NullMarked;
