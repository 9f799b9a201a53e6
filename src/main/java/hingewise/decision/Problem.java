package hingewise.decision;

import java.util.List;

/**
 * What can be the matter, what can be done about it and what it costs. Causes are numbered from 0 and are bits of a
 * {@code long}. A decision is expected to cost its own price, what causes take off its worth and, if any counted cause
 * that it does not cover is there, the price of failure and what each such cause costs besides.
 *
 * @param counted causes (one bit each) that cost something when left
 * @param failure paid once if any counted cause is left
 * @param leftover what each cause costs besides when it is left, by number; as long as there are causes
 * @param signs how many signs there are
 */
public record Problem(
        long counted,
        double failure,
        List<Double> leftover,
        int signs,
        List<Gate> gates,
        List<Act> acts,
        List<Ending> endings) {
    /** The most causes: each is one bit. */
    public static final int MOST_CAUSES = 64;

    /** The most gates and the most acts: what is open and what was done are bits too. */
    public static final int MOST_ACTS = 64;

    /** @throws IllegalArgumentException if there are too many of anything or nothing can be decided */
    public Problem {
        leftover = List.copyOf(leftover);
        gates = List.copyOf(gates);
        acts = List.copyOf(acts);
        endings = List.copyOf(endings);
        if (leftover.size() > MOST_CAUSES || gates.size() > MOST_ACTS || acts.size() > MOST_ACTS) {
            throw new IllegalArgumentException(leftover.size() + " causes, " + gates.size() + " gates and "
                    + acts.size() + " acts; at most " + MOST_CAUSES + " are possible of each");
        }
        if (endings.stream().anyMatch(e -> e.cost() < 0)) {
            throw new IllegalArgumentException("a decision costs less than nothing");
        }
        if (endings.stream().allMatch(Ending::unopened)) {
            throw new IllegalArgumentException("there must be a decision that is possible at any time");
        }
    }

    /** What a decision costs in a state, opening not included. */
    public double loss(Ending ending, long state) {
        long left = state & counted & ~ending.covers();
        double concern = left == 0 ? 0 : failure;
        for (long rest = left; rest != 0; rest &= rest - 1) {
            concern += leftover.get(Long.numberOfTrailingZeros(rest));
        }
        double loss = ending.cost() + ending.concern() * concern;
        // By number: this is asked so often that an iterator for each time would be felt.
        for (int i = 0; i < ending.losses().size(); i++) {
            Ending.Loss off = ending.losses().get(i);
            loss += (state & off.causes()) == 0 ? 0 : off.amount();
        }
        return loss;
    }

    /** The gates (one bit each) on the way to a gate, itself included. */
    public long path(int gate) {
        long path = 0;
        for (int g = gate; g != Gate.NONE; g = gates.get(g).parent()) {
            path |= 1L << g;
        }
        return path;
    }

    /** Whether any of these gates (one bit each) ends what may only be done unopened. */
    public boolean endsUnopened(long open) {
        for (long rest = open; rest != 0; rest &= rest - 1) {
            if (gates.get(Long.numberOfTrailingZeros(rest)).unopened()) {
                return true;
            }
        }
        return false;
    }

    /** What it costs to open gates (one bit each). */
    public double opening(long toOpen) {
        double cost = 0;
        for (long rest = toOpen; rest != 0; rest &= rest - 1) {
            cost += gates.get(Long.numberOfTrailingZeros(rest)).cost();
        }
        return cost;
    }
}
