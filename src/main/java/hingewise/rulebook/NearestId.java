package hingewise.rulebook;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.text.similarity.LevenshteinDistance;

/** Finds what somebody probably meant. */
public final class NearestId {
    private static final int LONGEST = 80;

    /** As many ids as are told at once. */
    private static final int FEW = 12;

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

    /**
     * A sentence to put after "is not known": the nearest id, or those that hold what is given as a whole word, or the
     * whole list where it is short.
     */
    public static String advice(String given, Collection<String> known) {
        return of(given, known).map(id -> "Did you mean \"" + id + "\"?").orElseGet(() -> holding(given, known));
    }

    private static String holding(String given, Collection<String> known) {
        List<String> holding = known.stream()
                .filter(id -> !given.isEmpty() && ("-" + id + "-").contains("-" + given + "-"))
                .sorted()
                .toList();
        if (holding.isEmpty()) {
            return known.size() <= FEW
                    ? "Known are: " + String.join(", ", known) + "."
                    : "Nothing known is close to it.";
        }
        String more = holding.size() > FEW ? " and " + (holding.size() - FEW) + " more" : "";
        return "Known with it are: " + String.join(", ", holding.subList(0, Math.min(FEW, holding.size()))) + more
                + ".";
    }
}
