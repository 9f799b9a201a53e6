package hingewise.decision;

import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/**
 * The decisions that can be taken while certain gates are open. The decision for each half of a lot is chosen by the other
 * half: chosen by the worlds it is judged on, every act would seem to save something, and the more so the finer it splits
 * them.
 */
final class Choice {
    private final int endings;
    /** What each decision still has to pay for opening. */
    private final double[] opening;

    private final int[] all;
    private final int[] concerned;

    /** Which decisions are weighed. */
    enum Among {
        ALL,
        /**
         * Those after which a fault that is left is a concern. If one of the others is best now, it may take several cures
         * until another is, and none of them alone seems to save anything.
         */
        CONCERNED
    }

    /** @param open gates (one bit each) */
    Choice(Problem problem, long open) {
        boolean opened = problem.endsUnopened(open);
        this.endings = problem.endings().size();
        this.opening = new double[endings];
        for (int e = 0; e < endings; e++) {
            opening[e] = problem.opening(problem.endings().get(e).opens() & ~open);
        }
        this.all = where(e -> !(opened && problem.endings().get(e).unopened()));
        int[] some = IntStream.of(all).filter(e -> !carefree(problem, e)).toArray();
        this.concerned = some.length == 0 ? all : some;
    }

    private int[] where(IntPredicate which) {
        return IntStream.range(0, endings).filter(which).toArray();
    }

    /** Whether no fault is a concern after a decision. */
    static boolean carefree(Problem problem, int ending) {
        return problem.endings().get(ending).covers() == -1L;
    }

    /** What deciding costs in a state in which each decision costs so much. */
    double least(double[] losses) {
        double least = Double.POSITIVE_INFINITY;
        for (int e : all) {
            least = Math.min(least, losses[e] + opening[e]);
        }
        return least;
    }

    /** What deciding costs, by what each decision does. */
    double least(Sums sums, Among among) {
        return cost(sums.second, best(sums.first, among)) + cost(sums.first, best(sums.second, among));
    }

    /**
     * The decision that costs least, the first of equals.
     *
     * @param sums of one half, or of both together
     */
    int best(double[] sums, Among among) {
        int best = -1;
        double least = Double.POSITIVE_INFINITY;
        for (int e : among == Among.ALL ? all : concerned) {
            double cost = Saving.coarse(cost(sums, e));
            if (cost < least) {
                best = e;
                least = cost;
            }
        }
        return best;
    }

    private double cost(double[] sums, int ending) {
        return sums[ending] + sums[endings] * opening[ending];
    }
}
