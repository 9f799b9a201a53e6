package hingewise.review;

import java.util.Arrays;

/** How far two rows of numbers go together. */
final class Correlation {
    private Correlation() {}

    /** The row less its mean and of length one; all zero if it never varies. */
    static double[] standardized(double[] row) {
        double mean = Arrays.stream(row).average().orElse(0);
        double length =
                Math.sqrt(Arrays.stream(row).map(x -> (x - mean) * (x - mean)).sum());
        return Arrays.stream(row)
                .map(x -> length < 1e-12 ? 0 : (x - mean) / length)
                .toArray();
    }

    /**
     * The square of the correlation, less 1 / (n − 1), which rows that have nothing to do with each other give on
     * average; 0 where one of them never varies.
     *
     * @param x standardized
     * @param y standardized, as long
     */
    static double squared(double[] x, double[] y) {
        double product = 0;
        boolean varies = false;
        for (int i = 0; i < x.length; i++) {
            product += x[i] * y[i];
            varies |= y[i] != 0;
        }
        return varies ? product * product - 1.0 / (x.length - 1) : 0;
    }
}
