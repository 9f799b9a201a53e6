package hingewise.decision;

/**
 * What each decision costs, summed over the two halves of some worlds; in each half the last figure is how many worlds
 * those are. Halves and states are arrays of one length that are walked together: that is the work most often done.
 */
final class Sums {
    final double[] first;
    final double[] second;

    private Sums(double[] first, double[] second) {
        this.first = first;
        this.second = second;
    }

    /** @param length how many figures there are of a state, see {@link States#losses} */
    static Sums none(int length) {
        return new Sums(new double[length], new double[length]);
    }

    Sums copy() {
        return new Sums(first.clone(), second.clone());
    }

    double[] half(int number) {
        return number == 0 ? first : second;
    }

    /** Both halves together. */
    double[] all() {
        double[] all = first.clone();
        add(all, second);
        return all;
    }

    void takeOff(Sums other) {
        takeOff(first, other.first);
        takeOff(second, other.second);
    }

    static void add(double[] to, double[] some) {
        for (int i = 0; i < some.length; i++) {
            to[i] += some[i];
        }
    }

    static void takeOff(double[] from, double[] some) {
        for (int i = 0; i < some.length; i++) {
            from[i] -= some[i];
        }
    }
}
