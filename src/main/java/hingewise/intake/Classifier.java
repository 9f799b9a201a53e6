package hingewise.intake;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * How likely words are to make each of many claims, learned from examples: for each claim a logistic regression of its
 * own, against all examples that do not make it. The weights are found by stochastic gradient descent whose steps shrink
 * with what each weight has moved (AdaGrad: Duchi, Hazan & Singer 2011, JMLR 12:2121-2159). The same examples and seed
 * give the same weights.
 */
final class Classifier {
    /**
     * An example.
     *
     * @param features what stands in its words
     * @param claims what they claim; none when they claim nothing
     */
    record Example(Set<String> features, Set<String> claims) {}

    /** An example with numbers for names, in rising order. */
    private record Lesson(int[] features, int[] claims) {
        /** The same with the features that are kept, under their new numbers. */
        Lesson keeping(int[] kept) {
            return new Lesson(
                    Arrays.stream(features)
                            .map(f -> kept[f])
                            .filter(f -> f != RARELY_SEEN)
                            .sorted()
                            .toArray(),
                    claims);
        }
    }

    private static final int ROUNDS = 5;
    private static final double STEP = 1;
    /** Before anything is learned each claim is as rare as this, in logarithms of odds. */
    private static final float RARE = -3;
    /** A claim that an example does not make, and that has lower odds there, needs no lesson. */
    private static final float CLEARLY_NOT = -3;
    /** A weight's first steps are kept short as if it had moved by this already. */
    private static final float MOVED = .1f;
    /** A feature of fewer examples tells nothing that could be learned. */
    private static final int FEWEST = 5;

    private static final int RARELY_SEEN = -1;
    /** So that several cores can learn at once. */
    private static final int SHARES = 4;

    private final List<String> claims;
    private final Map<String, Integer> features;
    private final float[] bases;
    /** By feature, then by claim. */
    private final float[][] weights;

    private Classifier(List<String> claims, Map<String, Integer> features, float[] bases, float[][] weights) {
        this.claims = claims;
        this.features = features;
        this.bases = bases;
        this.weights = weights;
    }

    /**
     * @param examples gone through once; none is kept, since together they take much room
     * @param seed of the order in which they are learned from
     */
    static Classifier taught(Stream<Example> examples, long seed) {
        Map<String, Integer> features = new HashMap<>();
        Map<String, Integer> claims = new HashMap<>();
        List<Lesson> all = examples.map(e -> new Lesson(numbered(e.features(), features), numbered(e.claims(), claims)))
                .toList();
        int[] seen = new int[features.size()];
        all.forEach(lesson -> Arrays.stream(lesson.features()).forEach(f -> seen[f]++));
        features.values().removeIf(f -> seen[f] < FEWEST);
        int[] kept = new int[seen.length];
        Arrays.fill(kept, RARELY_SEEN);
        int next = 0;
        for (Map.Entry<String, Integer> f : new TreeMap<>(features).entrySet()) {
            kept[f.getValue()] = next;
            features.put(f.getKey(), next++);
        }
        String[] names = new String[claims.size()];
        claims.forEach((name, n) -> names[n] = name);
        float[] bases = new float[names.length];
        Arrays.fill(bases, RARE);
        Classifier classifier =
                new Classifier(List.of(names), features, bases, new float[features.size()][names.length]);
        classifier.learn(all.stream().map(lesson -> lesson.keeping(kept)).toList(), seed);
        return classifier;
    }

    /** What {@link #pack} has packed. */
    static Classifier unpacked(Unpacker in) {
        List<String> claims = in.names();
        List<String> names = in.names();
        Map<String, Integer> features = new HashMap<>(2 * names.size());
        float[] bases = in.numbers();
        float[][] weights = new float[names.size()][];
        for (int f = 0; f < weights.length; f++) {
            features.put(names.get(f), f);
            weights[f] = in.numbers();
        }
        return new Classifier(List.copyOf(claims), features, bases, weights);
    }

    void pack(Packer out) throws IOException {
        out.names(claims);
        out.names(features.keySet().stream()
                .sorted(Comparator.comparing(features::get))
                .toList());
        out.numbers(bases);
        for (float[] of : weights) {
            out.numbers(of);
        }
    }

    /** Numbers for names, in rising order; a new name takes the next number. */
    private static int[] numbered(Set<String> names, Map<String, Integer> numbers) {
        return names.stream()
                .mapToInt(n -> numbers.computeIfAbsent(n, k -> numbers.size()))
                .sorted()
                .toArray();
    }

    /** No claim is learned by way of another, so that they can be shared out. */
    private void learn(List<Lesson> lessons, long seed) {
        IntStream.range(0, SHARES).parallel().forEach(s -> {
            int from = claims.size() * s / SHARES;
            int to = claims.size() * (s + 1) / SHARES;
            learn(lessons, new Random(seed), from, to);
        });
    }

    private void learn(List<Lesson> lessons, Random random, int from, int to) {
        float[] movedBases = new float[to - from];
        Arrays.fill(movedBases, 1);
        float[][] moved = new float[weights.length][to - from];
        for (float[] of : moved) {
            Arrays.fill(of, MOVED);
        }
        float[] odds = new float[to - from];
        List<Lesson> order = new ArrayList<>(lessons);
        for (int round = 0; round < ROUNDS; round++) {
            for (int i = order.size(); i > 1; i--) {
                Collections.swap(order, i - 1, random.nextInt(i));
            }
            for (Lesson lesson : order) {
                float each = each(lesson.features());
                odds(lesson.features(), each, from, odds);
                for (int c = 0; c < odds.length; c++) {
                    boolean made = Arrays.binarySearch(lesson.claims(), from + c) >= 0;
                    if (made || odds[c] > CLEARLY_NOT) {
                        double error = chance(odds[c]) - (made ? 1 : 0);
                        bases[from + c] -= step(movedBases, c, error);
                        for (int f : lesson.features()) {
                            weights[f][from + c] -= step(moved[f], c, error * each);
                        }
                    }
                }
            }
        }
    }

    private static float step(float[] moved, int c, double slope) {
        moved[c] += (float) (slope * slope);
        return (float) (STEP * slope / Math.sqrt(moved[c]));
    }

    /** What one feature counts, so that long sentences do not weigh more than short ones. */
    private static float each(int[] features) {
        return (float) (1 / Math.sqrt(Math.max(1, features.length)));
    }

    /** The logarithms of the odds of as many claims as there is room for, from this one on. */
    private void odds(int[] present, float each, int from, float[] odds) {
        Arrays.fill(odds, 0);
        for (int f : present) {
            float[] of = weights[f];
            for (int c = 0; c < odds.length; c++) {
                odds[c] += of[from + c];
            }
        }
        for (int c = 0; c < odds.length; c++) {
            odds[c] = bases[from + c] + each * odds[c];
        }
    }

    private static double chance(double odds) {
        return 1 / (1 + Math.exp(-odds));
    }

    /** The chance of each claim, in 0–1. */
    Map<String, Double> chances(Set<String> present) {
        int[] known = present.stream()
                .map(features::get)
                .filter(Objects::nonNull)
                .mapToInt(f -> f)
                .sorted()
                .toArray();
        float[] odds = new float[bases.length];
        odds(known, each(known), 0, odds);
        Map<String, Double> chances = new HashMap<>();
        for (int c = 0; c < odds.length; c++) {
            chances.put(claims.get(c), chance(odds[c]));
        }
        return chances;
    }
}
