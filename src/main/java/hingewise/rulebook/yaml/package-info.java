/** Reads and checks a rule book written in YAML: all problems at once, each with file, line and what to do. */
@NullMarked
package hingewise.rulebook.yaml;

import org.jspecify.annotations.NullMarked;
