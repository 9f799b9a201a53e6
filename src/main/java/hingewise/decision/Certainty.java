package hingewise.decision;

import java.util.HashMap;
import java.util.Map;

/**
 * What a case would cost if at every moment the causes were known: nothing has to be looked at, and after a try it is
 * known what it cured. Openings and tries are taken to harm nothing. No policy can be expected to cost less.
 */
final class Certainty {
    private final Problem problem;
    private final Act[] tries;
    private final long[] cures;
    private final long[] paths;
    private final long curable;
    private final Map<Key, Double> known = new HashMap<>();

    private record Key(long state, long open, long done) {}

    Certainty(Problem problem) {
        this.problem = problem;
        this.tries = problem.acts().stream().filter(a -> !a.cures().isEmpty()).toArray(Act[]::new);
        this.cures = new long[tries.length];
        this.paths = new long[tries.length];
        long all = 0;
        for (int t = 0; t < tries.length; t++) {
            for (Cure cure : tries[t].cures()) {
                cures[t] |= 1L << cure.cause() & problem.counted();
            }
            paths[t] = problem.path(tries[t].gate());
            all |= cures[t];
        }
        curable = all;
    }

    double cost(long state, long open) {
        return cost(new Key(state & problem.counted(), open, 0));
    }

    private double cost(Key key) {
        Double before = known.get(key);
        if (before != null) {
            return before;
        }
        double best = end(key.state(), key.open());
        double least = least(key.state() & ~curable);
        for (int t = 0; t < tries.length; t++) {
            if ((key.done() >>> t & 1) == 0 && (key.state() & cures[t]) != 0) {
                double cost = tries[t].cost() + problem.opening(paths[t] & ~key.open());
                if (cost + least < best) {
                    best = Math.min(best, cost + after(key, t));
                }
            }
        }
        known.put(key, best);
        return best;
    }

    /** What the best decision costs at least, whatever is open. */
    private double least(long state) {
        double least = Double.POSITIVE_INFINITY;
        for (Ending ending : problem.endings()) {
            least = Math.min(least, problem.loss(ending, state));
        }
        return least;
    }

    private double end(long state, long open) {
        boolean opened = problem.endsUnopened(open);
        double best = Double.POSITIVE_INFINITY;
        for (Ending ending : problem.endings()) {
            if (!(opened && ending.unopened())) {
                best = Math.min(best, problem.loss(ending, state) + problem.opening(ending.opens() & ~open));
            }
        }
        return best;
    }

    private double after(Key key, int number) {
        long open = key.open() | paths[number];
        return after(key.state(), open, key.done() | 1L << number, tries[number], 0);
    }

    /** Expected over which of the cures from this one on take effect. */
    private double after(long state, long open, long done, Act act, int from) {
        for (int i = from; i < act.cures().size(); i++) {
            Cure cure = act.cures().get(i);
            long bit = 1L << cure.cause();
            if ((state & bit) != 0) {
                double cured = cure.chance() * after(state & ~bit, open, done, act, i + 1);
                return cure.chance() < 1 ? cured + (1 - cure.chance()) * after(state, open, done, act, i + 1) : cured;
            }
        }
        return cost(new Key(state, open, done));
    }
}
