package hingewise.rulebook;

import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;
import org.apache.commons.text.similarity.LevenshteinDistance;

/** Finds what somebody probably meant. */
public final class NearestId {
    private static final int LONGEST = 80;

    private NearestId() {}

    /**
     * The known id that takes the fewest changes of single letters, when those are at most a third of what is given (or
     * two, for a short word) and leave something of it; of several, the first in the alphabet.
     */
    public static Optional<String> of(String given, Collection<String> known) {
        if (given.length() > LONGEST) {
            return Optional.empty();
        }
        int most = Math.min(Math.max(2, given.length() / 3), given.length() - 1);
        return most < 1 ? Optional.empty() : within(most, given, known);
    }

    private static Optional<String> within(int most, String given, Collection<String> known) {
        LevenshteinDistance distance = new LevenshteinDistance(most);
        return known.stream()
                .filter(id -> distance.apply(given, id) >= 0)
                .min(Comparator.comparingInt((String id) -> distance.apply(given, id))
                        .thenComparing(Comparator.naturalOrder()));
    }

    /** A sentence to put after "is not known": the nearest id, or the whole list where it is short. */
    public static String advice(String given, Collection<String> known) {
        return of(given, known)
                .map(id -> "Did you mean \"" + id + "\"?")
                .orElse(
                        known.size() <= 12
                                ? "Known are: " + String.join(", ", known) + "."
                                : "Nothing known is close to it.");
    }
}
