package hingewise.decision;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * Worlds that look alike so far. What was reckoned of it is kept with it: the same lot comes up in many orders of doing
 * things.
 */
final class Lot {
    private final int[] situations;
    private final int half;
    private final long open;
    private final long done;
    private final int hash;

    /** What comes of acts, by number, as far as it was asked. */
    @Nullable
    Board.Outcome[] outcomes = {};
    /** The lots that acts make of it, by number, as far as it was asked. */
    @Nullable
    Lot[][] splits = {};
    /** What each decision costs in it, once it was asked. */
    @Nullable
    Sums sums;
    /** What deciding costs in it, once it was asked. */
    double end = Double.NaN;

    /**
     * @param situations numbers of the worlds, each in the state it is in by now, the two halves one after the other; not to
     *     be changed
     * @param half how many belong to the first half
     * @param open gates that are open (one bit each)
     * @param done acts that were done (one bit each)
     */
    Lot(int[] situations, int half, long open, long done) {
        this.situations = situations;
        this.half = half;
        this.open = open;
        this.done = done;
        this.hash = 31 * (31 * Arrays.hashCode(situations) + Long.hashCode(open)) + Long.hashCode(done);
    }

    /** The number of a situation, by its place. */
    int situation(int place) {
        return situations[place];
    }

    /** The half that a place belongs to, 0 or 1. */
    int half(int place) {
        return place < half ? 0 : 1;
    }

    int size() {
        return situations.length;
    }

    long open() {
        return open;
    }

    long done() {
        return done;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Lot lot
                && hash == lot.hash
                && open == lot.open
                && done == lot.done
                && Arrays.equals(situations, lot.situations);
    }

    @Override
    public int hashCode() {
        return hash;
    }
}
