package hingewise.rulebook;

import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;
import org.apache.commons.text.similarity.LevenshteinDistance;

/** Finds what somebody probably meant. */
public final class NearestId {
    private NearestId() {}

    /** The known id closest in letters, if it is close enough to be meant. */
    public static Optional<String> of(String given, Collection<String> known) {
        LevenshteinDistance distance = LevenshteinDistance.getDefaultInstance();
        return known.stream()
                .min(Comparator.comparingInt((String id) -> distance.apply(given, id))
                        .thenComparing(Comparator.naturalOrder()))
                .filter(id -> distance.apply(given, id) <= Math.max(2, given.length() / 2));
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
