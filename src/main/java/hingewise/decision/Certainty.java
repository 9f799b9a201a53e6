package hingewise.decision;

import java.util.Arrays;

/**
 * What a case would cost if at every moment the causes were known: nothing has to be looked at, and after a try it is
 * known what it cured. Openings and tries are taken to harm nothing. No policy can be expected to cost less. Where very
 * many tries may follow each other in any order it is less than that: states met late are taken to be cured by one try.
 */
final class Certainty {
    /** States in settings that are followed to their end. */
    private static final int MOST = 1 << 19;

    private final Problem problem;
    private final Act[] tries;
    private final long[] cures;
    private final long[] paths;
    private final States states;
    private final Choices choices;
    private final Numbering lefts = new Numbering();
    /** What is open, and which tries are left that may cure anything that is there. */
    private final Numbering settings = new Numbering();
    /** A state in a setting. */
    private final Numbering places = new Numbering();

    private double[] known = {};

    Certainty(Problem problem) {
        this(problem, new States(problem), new Choices(problem));
    }

    /** With states and choices of the same problem of which some may be known already. */
    Certainty(Problem problem, States states, Choices choices) {
        this.problem = problem;
        this.states = states;
        this.choices = choices;
        this.tries = problem.acts().stream().filter(a -> !a.cures().isEmpty()).toArray(Act[]::new);
        this.cures = new long[tries.length];
        this.paths = new long[tries.length];
        for (int t = 0; t < tries.length; t++) {
            for (Cure cure : tries[t].cures()) {
                cures[t] |= 1L << cure.cause() & problem.counted();
            }
            paths[t] = problem.path(tries[t].gate());
        }
    }

    double cost(long state, long open) {
        return cost(state & problem.counted(), open, tries.length == 0 ? 0 : -1L >>> 64 - tries.length);
    }

    /** @param undone tries (one bit each) that are not done yet */
    private double cost(long state, long open, long undone) {
        long left = 0;
        for (long rest = undone; rest != 0; rest &= rest - 1) {
            if ((state & cures[Long.numberOfTrailingZeros(rest)]) != 0) {
                left |= Long.lowestOneBit(rest);
            }
        }
        int setting = settings.number((long) lefts.number(left) << 32 | choices.number(open));
        int place = places.number((long) states.number(state) << 32 | setting);
        if (place >= known.length) {
            int before = known.length;
            known = Arrays.copyOf(known, 2 * place + 64);
            Arrays.fill(known, before, known.length, Double.NaN);
        }
        if (Double.isNaN(known[place])) {
            double cost = reckoned(state, open, left);
            known[place] = cost;
        }
        return known[place];
    }

    private double reckoned(long state, long open, long left) {
        double best = choices.with(open).least(losses(state));
        long curable = 0;
        for (long rest = left; rest != 0; rest &= rest - 1) {
            curable |= cures[Long.numberOfTrailingZeros(rest)];
        }
        double least = least(state & ~curable);
        for (long rest = left; rest != 0; rest &= rest - 1) {
            int t = Long.numberOfTrailingZeros(rest);
            double cost = tries[t].cost() + problem.opening(paths[t] & ~open);
            if (cost + least < best) {
                double after =
                        places.count() > MOST ? least : after(state, open | paths[t], left & ~(1L << t), tries[t], 0);
                best = Math.min(best, cost + after);
            }
        }
        return best;
    }

    private double[] losses(long state) {
        return states.losses(states.number(state));
    }

    /** What the best decision costs at least, whatever is open. */
    private double least(long state) {
        double[] losses = losses(state);
        double least = Double.POSITIVE_INFINITY;
        for (int e = 0; e < problem.endings().size(); e++) {
            least = Math.min(least, losses[e]);
        }
        return least;
    }

    /** Expected over which of the cures from this one on take effect. */
    private double after(long state, long open, long left, Act act, int from) {
        for (int i = from; i < act.cures().size(); i++) {
            Cure cure = act.cures().get(i);
            long bit = 1L << cure.cause();
            if ((state & bit) != 0) {
                double cured = cure.chance() * after(state & ~bit, open, left, act, i + 1);
                return cure.chance() < 1 ? cured + (1 - cure.chance()) * after(state, open, left, act, i + 1) : cured;
            }
        }
        return cost(state, open, left);
    }
}
