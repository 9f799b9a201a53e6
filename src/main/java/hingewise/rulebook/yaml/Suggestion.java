package hingewise.rulebook.yaml;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.text.similarity.LevenshteinDistance;

/** The known word that a wrong one was probably meant to be. */
final class Suggestion {
    private static final int LONGEST = 80;

    private Suggestion() {}

    private record Near(String word, int distance) {}

    /** The nearest known word by edits, at most a third of the letters; of equally near ones the first. */
    static Optional<String> nearest(String wrong, Collection<String> known) {
        if (wrong.isEmpty() || wrong.length() > LONGEST) {
            return Optional.empty();
        }
        String lower = wrong.toLowerCase(Locale.ROOT).replace('_', '-').replace(' ', '-');
        int most = Math.max(1, (lower.length() + 1) / 3);
        LevenshteinDistance distance = new LevenshteinDistance(most);
        return known.stream()
                .filter(k -> Math.abs(k.length() - lower.length()) <= most)
                .map(k -> new Near(k, distance.apply(lower, k)))
                .filter(n -> n.distance() >= 0)
                .min(Comparator.comparingInt(Near::distance))
                .map(Near::word);
    }
}
