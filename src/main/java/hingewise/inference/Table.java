package hingewise.inference;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;

/**
 * A full conditional table: P(yes) for each configuration of the parents. The first parent is the most significant bit,
 * no is 0 and yes is 1, so with parents A, B the rows are (no no), (no yes), (yes no), (yes yes).
 */
public final class Table implements Mechanism {
    /** The most parents a table may have. */
    public static final int MOST_PARENTS = 8;

    private final List<String> parents;
    private final double[] yes;

    private Table(List<String> parents, double[] yes) {
        this.parents = parents;
        this.yes = yes;
    }

    /**
     * Makes a table.
     *
     * @param parents at most {@value #MOST_PARENTS} names
     * @param yes P(yes) for each of the 2^n rows, each in [0, 1]; 0 and 1 are allowed
     * @throws IllegalArgumentException when a count, a name or a chance is wrong
     */
    public static Table of(List<String> parents, double... yes) {
        if (parents.size() > MOST_PARENTS) {
            throw new IllegalArgumentException(
                    "a table has " + parents.size() + " parents; at most " + MOST_PARENTS + " are possible");
        }
        if (new HashSet<>(parents).size() < parents.size()) {
            throw new IllegalArgumentException("a table lists a parent twice: " + parents);
        }
        if (yes.length != 1 << parents.size()) {
            throw new IllegalArgumentException("a table over the parents " + parents + " needs " + (1 << parents.size())
                    + " rows, not " + yes.length);
        }
        for (int row = 0; row < yes.length; row++) {
            Chances.check(yes[row], "row " + row + " of the table over " + parents);
        }
        return new Table(List.copyOf(parents), yes.clone());
    }

    @Override
    public List<String> parents() {
        return parents;
    }

    /** How many rows the table has: two to the number of parents. */
    public int rows() {
        return yes.length;
    }

    /** P(yes | row), the row counted as described above. */
    public double yes(int row) {
        return yes[row];
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Table table && parents.equals(table.parents) && Arrays.equals(yes, table.yes);
    }

    @Override
    public int hashCode() {
        return 31 * parents.hashCode() + Arrays.hashCode(yes);
    }

    @Override
    public String toString() {
        return "Table" + parents + Arrays.toString(yes);
    }
}
