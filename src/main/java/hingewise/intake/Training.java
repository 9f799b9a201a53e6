package hingewise.intake;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/**
 * Teaches a {@link Network} by gradient descent on the logarithmic loss of all claims, in batches, with steps by Adam
 * (Kingma & Ba 2015, ICLR), weights that decay a little (Loshchilov & Hutter 2019, ICLR) and hidden units that are left
 * out at random while learning (Srivastava et al. 2014, JMLR 15:1929-1958). The same lessons and seed give the same
 * network, on any machine.
 */
final class Training {
    /**
     * An example with numbers for names.
     *
     * @param features in rising order
     * @param claims in rising order
     */
    record Lesson(int[] features, int[] claims) {}

    private static final int HIDDEN = 128;
    private static final int ROUNDS = 6;
    private static final int BATCH = 256;
    /** Few lessons are gone through more often, until there were as many batches. */
    private static final int FEWEST_BATCHES = 600;

    /** The length of the first steps; they shrink evenly to none. */
    private static final double RATE = .015;

    private static final float LEFT_OUT = .3f;
    /** Before anything is learned each claim is as rare as this, in logarithms of odds. */
    private static final float RARE = -4;
    /** A claim that an example does not make, and that has lower odds there, needs no lesson. */
    private static final float CLEARLY_NOT = -7;

    private static final double SPREAD = .1;

    private final Random random;
    private final Weights features;
    private final Weights thresholds = new Weights(1, HIDDEN);
    private final Weights units;
    private final Weights bases;
    private int batches;

    private final float[] hidden = new float[HIDDEN];
    private final float[] blame = new float[HIDDEN];
    private final float[] odds;

    private Training(int features, int claims, Random random) {
        this.random = random;
        this.features = new Weights(features, HIDDEN);
        this.units = new Weights(HIDDEN, claims);
        this.bases = new Weights(1, claims);
        this.odds = new float[claims];
        this.features.scatter(random, SPREAD);
        this.units.scatter(random, 1 / Math.sqrt(3 * HIDDEN));
        Arrays.fill(bases.now[0], RARE);
    }

    /** @param seed of the order of the lessons and of what is left to chance */
    static Network taught(List<Lesson> lessons, int features, int claims, long seed) {
        Random random = new Random(seed);
        Training training = new Training(features, claims, random);
        List<Lesson> order = new ArrayList<>(lessons);
        int each = Math.max(1, (lessons.size() + BATCH - 1) / BATCH);
        int rounds = Math.max(ROUNDS, FEWEST_BATCHES / each);
        for (int round = 0; round < rounds; round++) {
            for (int i = order.size(); i > 1; i--) {
                Collections.swap(order, i - 1, random.nextInt(i));
            }
            double rate = RATE * (rounds - round) / rounds;
            for (int from = 0; from < order.size(); from += BATCH) {
                training.batch(order.subList(from, Math.min(order.size(), from + BATCH)), rate);
            }
        }
        return new Network(
                Rows.rounded(training.features.now),
                training.thresholds.now[0],
                Rows.rounded(training.units.now),
                training.bases.now[0]);
    }

    private void batch(List<Lesson> lessons, double rate) {
        lessons.forEach(this::learn);
        batches++;
        for (Weights w : List.of(features, thresholds, units, bases)) {
            w.step(rate, batches, lessons.size());
        }
    }

    /** Adds to the slopes what this lesson would have the weights be less. */
    private void learn(Lesson lesson) {
        float each = Network.each(lesson.features());
        think(lesson.features(), each);
        Arrays.fill(blame, 0);
        int next = 0;
        for (int c = 0; c < odds.length; c++) {
            boolean made = next < lesson.claims().length && lesson.claims()[next] == c;
            next += made ? 1 : 0;
            if (made || odds[c] > CLEARLY_NOT) {
                learn(c, (float) (1 / (1 + StrictMath.exp(-odds[c])) - (made ? 1 : 0)));
            }
        }
        for (int h = 0; h < HIDDEN; h++) {
            blame[h] = hidden[h] > 0 ? blame[h] / (1 - LEFT_OUT) : 0;
            thresholds.slope[0][h] += blame[h];
            blame[h] *= each;
        }
        for (int f : lesson.features()) {
            float[] slope = features.slope[f];
            for (int h = 0; h < HIDDEN; h++) {
                slope[h] += blame[h];
            }
        }
    }

    /** What comes out as the weights are now, without the hidden units that are left out. */
    private void think(int[] present, float each) {
        System.arraycopy(thresholds.now[0], 0, hidden, 0, HIDDEN);
        for (int f : present) {
            float[] of = features.now[f];
            for (int h = 0; h < HIDDEN; h++) {
                hidden[h] += each * of[h];
            }
        }
        System.arraycopy(bases.now[0], 0, odds, 0, odds.length);
        for (int h = 0; h < HIDDEN; h++) {
            boolean counts = hidden[h] > 0 && random.nextFloat() >= LEFT_OUT;
            hidden[h] = counts ? hidden[h] / (1 - LEFT_OUT) : 0;
            if (counts) {
                float[] of = units.now[h];
                for (int c = 0; c < odds.length; c++) {
                    odds[c] += hidden[h] * of[c];
                }
            }
        }
    }

    private void learn(int claim, float error) {
        bases.slope[0][claim] += error;
        for (int h = 0; h < HIDDEN; h++) {
            if (hidden[h] > 0) {
                blame[h] += error * units.now[h][claim];
                units.slope[h][claim] += error * hidden[h];
            }
        }
    }
}
