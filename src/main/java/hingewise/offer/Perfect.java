package hingewise.offer;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.OptionalLong;

/** What could be known at best: which way the phone is. Of all that can be done the best in each way is enough. */
final class Perfect {
    private final List<State> states;
    private final List<Choice> atOnce;

    private Perfect(List<State> states, List<Choice> atOnce) {
        this.states = states;
        this.atOnce = atOnce;
    }

    /**
     * A state for each way the phone may be.
     *
     * @param atOnce what may be done without spending anything before
     */
    static List<State> states(List<State> states, List<Choice> atOnce) {
        return new Perfect(states, atOnce).states();
    }

    private List<State> states() {
        List<State> apart = new ArrayList<>();
        int ways = states.isEmpty() ? 0 : states.get(0).chances().length;
        for (int w = 0; w < ways; w++) {
            double chance = 0;
            for (State state : states) {
                chance += state.chances()[w];
            }
            if (chance > 0) {
                apart.add(new State(new double[] {chance}, best(w)));
            }
        }
        return apart;
    }

    /** The best after which the price stays paid, and the best with which it is given back. */
    private List<Choice> best(int way) {
        List<Choice> best = new ArrayList<>();
        BitSet given = new BitSet();
        given.set(0);
        best(way, false).ifPresent(most -> best.add(new Choice("keep", most)));
        best(way, true).ifPresent(most -> best.add(new Choice("give back", new long[] {most}, given)));
        return best;
    }

    private OptionalLong best(int way, boolean refunded) {
        boolean any = false;
        long most = Long.MIN_VALUE;
        for (Choice choice : atOnce) {
            if (choice.refunded().get(way) == refunded) {
                any = true;
                most = Math.max(most, choice.proceeds()[way]);
            }
        }
        for (State state : states) {
            if (state.chances()[way] > 0) {
                for (Choice choice : state.choices()) {
                    if (choice.refunded().get(way) == refunded) {
                        any = true;
                        most = Math.max(most, choice.proceeds()[way] - state.spent());
                    }
                }
            }
        }
        return any ? OptionalLong.of(most) : OptionalLong.empty();
    }
}
