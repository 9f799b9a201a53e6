package hingewise.inference;

import java.util.List;

/** How a yes/no variable depends on its parents. */
public sealed interface Mechanism permits NoisyOr, Table {
    /** Names of the parents, in the order the numbers refer to; no name twice. */
    List<String> parents();
}
