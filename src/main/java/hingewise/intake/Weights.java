package hingewise.intake;

import java.util.Random;

/** Weights while they are learned, with what Adam (Kingma & Ba 2015, ICLR) keeps of each. */
final class Weights {
    /** How much of the mean slope, and of the mean square of it, is kept from batch to batch. */
    private static final float KEPT = .9f;

    private static final float SQUARES_KEPT = .999f;
    private static final float LEAST = 1e-8f;
    private static final double DECAY = 1e-4;

    final float[][] now;
    /** The sum of the slopes of the loss over the batch that is being learned from. */
    final float[][] slope;

    private final float[][] mean;
    private final float[][] square;

    Weights(int rows, int columns) {
        this.now = new float[rows][columns];
        this.slope = new float[rows][columns];
        this.mean = new float[rows][columns];
        this.square = new float[rows][columns];
    }

    /** So that hidden units do not all learn the same. */
    void scatter(Random random, double spread) {
        for (float[] row : now) {
            for (int i = 0; i < row.length; i++) {
                row[i] = (float) (random.nextGaussian() * spread);
            }
        }
    }

    /**
     * Moves the weights and forgets the slopes.
     *
     * @param batches how many were learned from, with this one
     * @param lessons in the batch
     */
    void step(double rate, int batches, int lessons) {
        float length = (float)
                (rate * Math.sqrt(1 - StrictMath.pow(SQUARES_KEPT, batches)) / (1 - StrictMath.pow(KEPT, batches)));
        float less = (float) (1 - rate * DECAY);
        for (int r = 0; r < now.length; r++) {
            step(now[r], slope[r], mean[r], square[r], length, less, 1f / lessons);
        }
    }

    private static void step(
            float[] now, float[] slope, float[] mean, float[] square, float length, float less, float share) {
        for (int i = 0; i < now.length; i++) {
            float of = slope[i] * share;
            mean[i] = KEPT * mean[i] + (1 - KEPT) * of;
            square[i] = SQUARES_KEPT * square[i] + (1 - SQUARES_KEPT) * of * of;
            now[i] = less * now[i] - length * mean[i] / ((float) Math.sqrt(square[i]) + LEAST);
            slope[i] = 0;
        }
    }
}
