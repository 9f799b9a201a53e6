package hingewise.intake;

import hingewise.intake.Training.Lesson;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * How likely words are to make each of many claims, learned from examples: the mean of what a few networks make of them,
 * each taught on its own, in logarithms of odds. The same examples and seed give the same.
 */
final class Classifier {
    /**
     * An example.
     *
     * @param features what stands in its words
     * @param claims what they claim; none when they claim nothing
     */
    record Example(Set<String> features, Set<String> claims) {}

    /** A feature of fewer examples tells nothing that could be learned. */
    private static final int FEWEST = 6;

    private static final int RARELY_SEEN = -1;
    /** Networks that are taught by chance otherwise err otherwise, and less together. */
    private static final int NETWORKS = 2;

    private final List<String> claims;
    private final Map<String, Integer> features;
    private final List<Network> networks;

    private Classifier(List<String> claims, Map<String, Integer> features, List<Network> networks) {
        this.claims = List.copyOf(claims);
        this.features = Map.copyOf(features);
        this.networks = List.copyOf(networks);
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
        List<Lesson> lessons = all.stream().map(lesson -> keeping(lesson, kept)).toList();
        List<Network> networks = IntStream.range(0, NETWORKS)
                .parallel()
                .mapToObj(n -> Training.taught(lessons, features.size(), names.length, seed + n))
                .toList();
        return new Classifier(List.of(names), features, networks);
    }

    /** What {@link #pack} has packed. */
    static Classifier unpacked(Unpacker in) {
        List<String> claims = in.names();
        List<String> names = in.names();
        Map<String, Integer> features = new HashMap<>(2 * names.size());
        for (int f = 0; f < names.size(); f++) {
            features.put(names.get(f), f);
        }
        List<Network> networks = new ArrayList<>();
        for (int n = 0; n < NETWORKS; n++) {
            networks.add(Network.unpacked(in));
        }
        return new Classifier(claims, features, networks);
    }

    void pack(Packer out) throws IOException {
        out.names(claims);
        out.names(features.keySet().stream()
                .sorted(Comparator.comparing(features::get))
                .toList());
        for (Network network : networks) {
            network.pack(out);
        }
    }

    /** A lesson with the features that are kept, under their new numbers. */
    private static Lesson keeping(Lesson lesson, int[] kept) {
        return new Lesson(
                Arrays.stream(lesson.features())
                        .map(f -> kept[f])
                        .filter(f -> f != RARELY_SEEN)
                        .sorted()
                        .toArray(),
                lesson.claims());
    }

    /** Numbers for names, in rising order; a new name takes the next number. */
    private static int[] numbered(Set<String> names, Map<String, Integer> numbers) {
        return names.stream()
                .mapToInt(n -> numbers.computeIfAbsent(n, k -> numbers.size()))
                .sorted()
                .toArray();
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
        double[] odds = new double[claims.size()];
        for (Network network : networks) {
            float[] of = network.odds(known);
            for (int c = 0; c < odds.length; c++) {
                odds[c] += of[c] / NETWORKS;
            }
        }
        Map<String, Double> chances = new HashMap<>();
        for (int c = 0; c < odds.length; c++) {
            chances.put(claims.get(c), chance(odds[c]));
        }
        return chances;
    }
}
