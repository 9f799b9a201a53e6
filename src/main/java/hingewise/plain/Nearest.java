package hingewise.plain;

import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.commons.text.similarity.LevenshteinDistance;

/** What a misspelt word was probably meant to be. */
public final class Nearest {
    private static final int LONGEST_WORD = 80;
    private static final int LISTED_AT_MOST = 12;

    private Nearest() {}

    /**
     * The known word that takes the fewest changes of single letters, when those are at most a third of the word (one
     * or two for a short word); of several, the first in the alphabet.
     */
    public static Optional<String> of(String word, Collection<String> known) {
        if (word.length() > LONGEST_WORD) {
            return Optional.empty();
        }
        int most = Math.max(2, word.length() / 3);
        LevenshteinDistance distance = new LevenshteinDistance(most);
        record Scored(String word, int changes) {}
        return known.stream()
                .map(k -> new Scored(k, distance.apply(word, k)))
                .filter(s -> s.changes() >= 0 && s.changes() < Math.max(word.length(), 2))
                .min(Comparator.comparingInt(Scored::changes).thenComparing(Scored::word))
                .map(Scored::word);
    }

    /** Advice to end a sentence with: the nearest known word, else all known words when they are few, else nothing. */
    public static String advice(String word, Collection<String> known) {
        Optional<String> nearest = of(word, known);
        if (nearest.isPresent()) {
            return "; did you mean \"" + nearest.get() + "\"?";
        }
        return known.isEmpty() || known.size() > LISTED_AT_MOST
                ? ""
                : "; known are " + known.stream().sorted().collect(Collectors.joining(", "));
    }
}
