package hingewise.decision;

import java.util.Arrays;

/**
 * Numbers the states that occur and keeps what each decision costs in them, to a fraction of a hundredth. Sums of such
 * amounts are exact up to millions in each world: they hang neither on the order of adding up nor on whether
 * something was added and taken off again.
 */
final class States {
    private static final double PARTS = 1 << 20;

    private final Problem problem;
    private final Numbering numbers = new Numbering();
    private double[][] losses = new double[256][];

    States(Problem problem) {
        this.problem = problem;
    }

    int count() {
        return numbers.count();
    }

    long state(int number) {
        return numbers.key(number);
    }

    /** What each decision costs in a state, in the order of the endings, and last a 1; not to be changed. */
    double[] losses(int number) {
        return losses[number];
    }

    /** The number of a state. */
    int number(long state) {
        int known = numbers.count();
        int number = numbers.number(state);
        if (number == known) {
            if (number == losses.length) {
                losses = Arrays.copyOf(losses, 2 * number);
            }
            losses[number] = reckoned(state);
        }
        return number;
    }

    private double[] reckoned(long state) {
        double[] figures = new double[problem.endings().size() + 1];
        for (int e = 0; e < figures.length - 1; e++) {
            figures[e] = Math.rint(problem.loss(problem.endings().get(e), state) * PARTS) / PARTS;
        }
        figures[figures.length - 1] = 1;
        return figures;
    }
}
