package hingewise.intake;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * How much a sentence is like examples of several kinds. Each word counts by how much oftener it stands in examples of the
 * kind than in all examples; the logarithms of these ratios are added up (naive Bayes, Maron 1961, JACM
 * 8:404-417). How often is smoothed towards all examples, with a weight of {@link #SMOOTHING} words.
 */
final class Likeness {
    private static final double SMOOTHING = 7;

    private record Weight(int kind, double value) {}

    private final List<String> kinds = new ArrayList<>();
    private final double[] few;
    private final Map<String, List<Weight>> weights = new HashMap<>();

    /** @param examples the words of each sentence, by kind */
    Likeness(Map<String, List<Set<String>>> examples) {
        Map<String, Integer> all = new HashMap<>();
        List<Map<String, Integer>> each = new ArrayList<>();
        examples.forEach((kind, sentences) -> {
            Map<String, Integer> here = new LinkedHashMap<>();
            sentences.forEach(s -> s.forEach(w -> {
                here.merge(w, 1, Integer::sum);
                all.merge(w, 1, Integer::sum);
            }));
            kinds.add(kind);
            each.add(here);
        });
        double total = all.values().stream().mapToInt(n -> n).sum();
        few = new double[kinds.size()];
        for (int a = 0; a < few.length; a++) {
            int size = each.get(a).values().stream().mapToInt(n -> n).sum();
            few[a] = Math.log(SMOOTHING / (size + SMOOTHING));
            int kind = a;
            each.get(a)
                    .forEach((word, n) -> weights.computeIfAbsent(word, w -> new ArrayList<>())
                            .add(new Weight(kind, Math.log1p(n * total / (SMOOTHING * all.getOrDefault(word, 1))))));
        }
    }

    /** How like a sentence is to the examples of each kind, in logarithms of odds. */
    Map<String, Double> of(Set<String> words) {
        double[] scores = new double[few.length];
        int known = 0;
        for (String word : words) {
            List<Weight> of = weights.getOrDefault(word, List.of());
            for (Weight w : of) {
                scores[w.kind] += w.value;
            }
            known += of.isEmpty() ? 0 : 1;
        }
        Map<String, Double> like = new HashMap<>();
        for (int a = 0; a < few.length; a++) {
            like.put(kinds.get(a), scores[a] + known * few[a]);
        }
        return like;
    }
}
