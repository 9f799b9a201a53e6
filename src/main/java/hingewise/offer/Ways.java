package hingewise.offer;

import hingewise.diagnosis.Diagnosis;
import hingewise.diagnosis.PossiblePhones;
import hingewise.diagnosis.RankedCause;
import hingewise.rulebook.Damage;
import hingewise.rulebook.Observation;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import java.util.stream.IntStream;

/**
 * The ways a phone may be and things may go: drawn from what is known of it, then weighted so that the likelier causes
 * have exactly their chances. They are divided into equal batches, each weighted by itself, from whose scatter the error
 * of a figure is told.
 */
final class Ways {
    static final int BATCHES = 8;
    private static final int IN_A_BATCH = 250;
    private static final int WEIGHTED_CAUSES = 12;
    private static final int ROUNDS = 20;

    private final Diagnosis diagnosis;
    private final PossiblePhones phones;
    private final long seed;
    private final double[] weights;
    private final Map<String, BitSet> changed;

    Ways(Diagnosis diagnosis, long seed) {
        this.diagnosis = diagnosis;
        this.seed = seed;
        this.phones = diagnosis.possiblePhones(BATCHES * IN_A_BATCH, seed);
        this.changed = Map.of();
        this.weights = new double[count()];
        List<RankedCause> undecided = diagnosis.causes().stream()
                .sorted(Comparator.comparingDouble((RankedCause c) -> -c.probability() * (1 - c.probability())))
                .limit(WEIGHTED_CAUSES)
                .toList();
        for (int batch = 0; batch < BATCHES; batch++) {
            weigh(batch, undecided);
        }
    }

    private Ways(Ways before, Map<String, BitSet> changed) {
        this.diagnosis = before.diagnosis;
        this.seed = before.seed;
        this.phones = before.phones;
        this.weights = before.weights;
        this.changed = Map.copyOf(changed);
    }

    /** The same after something was done to the phone: the ways that have some causes by now. */
    Ways with(Map<String, BitSet> causes) {
        Map<String, BitSet> all = new HashMap<>(changed);
        all.putAll(causes);
        return new Ways(this, all);
    }

    int count() {
        return phones.count();
    }

    /** Their chances; they sum to 1. */
    double[] weights() {
        return weights.clone();
    }

    /** The chances of one batch alone; they sum to 1 over it, and are 0 elsewhere. */
    double[] weights(int batch) {
        double[] own = new double[count()];
        IntStream.range(batch * IN_A_BATCH, (batch + 1) * IN_A_BATCH).forEach(w -> own[w] = weights[w] * BATCHES);
        return own;
    }

    /** The ways that have a cause by now. */
    BitSet withCause(String cause) {
        BitSet now = changed.get(cause);
        return (BitSet) (now == null ? phones.with(cause) : now).clone();
    }

    /** The chance that a cause is brought about, given that it is absent, in 0–1. */
    double chance(String cause, Damage damage) {
        if (damage.where().isEmpty()) {
            return damage.always();
        }
        BitSet with = withCause(cause);
        double absent = 0;
        double brought = 0;
        for (int w = with.nextClearBit(0); w < count(); w = with.nextClearBit(w + 1)) {
            int way = w;
            absent += weights[w];
            brought += weights[w] * damage.chance(s -> present(s, way));
        }
        return absent > 0 ? brought / absent : 0;
    }

    private boolean present(String cause, int way) {
        return Optional.ofNullable(changed.get(cause))
                .orElseGet(() -> phones.with(cause))
                .get(way);
    }

    BitSet afterHistory(String history) {
        return (BitSet) phones.after(history).clone();
    }

    /**
     * The chance, by way, that an observation shows that was never looked at; empty for one that was, see {@link
     * #showing}.
     */
    Optional<double[]> shows(Observation observation) {
        return phones.chances(observation, this::withCause);
    }

    /** The chance, by way, that a look reports an observation that was never looked at; empty for one that was. */
    Optional<double[]> reports(Observation observation, PossiblePhones.Look look) {
        return shows(observation)
                .map(shows -> Arrays.stream(shows)
                        .map(s -> s * look.ifSo() + (1 - s) * look.ifNot())
                        .toArray());
    }

    /**
     * The ways in which an observation shows by now. Whether a cause shows it is drawn once, so that it shows again after a
     * try that failed.
     */
    BitSet showing(String observation) {
        PossiblePhones.Showing drawn = phones.showing(observation);
        BitSet showing = (BitSet) drawn.otherwise().clone();
        drawn.by().forEach((cause, in) -> {
            BitSet by = withCause(cause);
            by.and(in);
            showing.or(by);
        });
        return showing;
    }

    /** The ways in which something happens that has a chance of its own; in each batch as often as it should. */
    BitSet happens(String what, double chance) {
        RandomGenerator random = new SplittableRandom(seed * 31 + what.hashCode());
        BitSet happens = new BitSet();
        for (int batch = 0; batch < BATCHES; batch++) {
            int[] order = shuffled(random);
            for (int i = 0; i < IN_A_BATCH; i++) {
                happens.set(batch * IN_A_BATCH + i, (order[i] + .5) / IN_A_BATCH < chance);
            }
        }
        return happens;
    }

    /** Factors on a price that scatters normally about 1 by this share, never below 0; in pairs about the middle. */
    double[] factors(double spread) {
        Random random = new Random(seed);
        SplittableRandom mixing = new SplittableRandom(seed + 1);
        double[] factors = new double[count()];
        for (int batch = 0; batch < BATCHES; batch++) {
            int[] order = shuffled(mixing);
            for (int i = 0; i < IN_A_BATCH; i += 2) {
                double off = spread * random.nextGaussian();
                factors[batch * IN_A_BATCH + order[i]] = Math.max(0, 1 + off);
                factors[batch * IN_A_BATCH + order[i + 1]] = Math.max(0, 1 - off);
            }
        }
        return factors;
    }

    private static int[] shuffled(RandomGenerator random) {
        int[] order = IntStream.range(0, IN_A_BATCH).toArray();
        for (int i = IN_A_BATCH - 1; i > 0; i--) {
            int j = random.nextInt(i + 1);
            int swapped = order[i];
            order[i] = order[j];
            order[j] = swapped;
        }
        return order;
    }

    /** Iterative proportional fitting: one cause after the other gets its chance, again and again. */
    private void weigh(int batch, List<RankedCause> causes) {
        int from = batch * IN_A_BATCH;
        int to = from + IN_A_BATCH;
        for (int w = from; w < to; w++) {
            weights[w] = 1.0 / count();
        }
        for (int round = 0; round < ROUNDS; round++) {
            for (RankedCause cause : causes) {
                BitSet with = withCause(cause.cause().id());
                double share = IntStream.range(from, to)
                        .filter(with::get)
                        .mapToDouble(w -> weights[w])
                        .sum();
                double wanted = diagnosis.chanceOf(cause.cause().id()) / BATCHES;
                double rest = 1.0 / BATCHES - share;
                if (share > 0 && rest > 0) {
                    for (int w = from; w < to; w++) {
                        weights[w] *= with.get(w) ? wanted / share : (1.0 / BATCHES - wanted) / rest;
                    }
                }
            }
        }
    }
}
