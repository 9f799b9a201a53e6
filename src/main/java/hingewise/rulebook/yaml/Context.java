package hingewise.rulebook.yaml;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What the readers of single entries need to know of the whole.
 *
 * @param whole whether every section of every file could be opened; if not, an unknown name may be defined in one that could not
 * @param strengths words for links; empty when they could not be read
 * @param rates words for rates; empty when they could not be read
 * @param decimals of the bench's currency; empty when it is not known
 */
public record Context(
        Problems problems,
        Entries entries,
        boolean whole,
        Optional<Map<String, Double>> strengths,
        Optional<Map<String, Double>> rates,
        OptionalInt decimals) {
    /** For reading a file beside the rule book. */
    public static Context beside(Problems problems, int decimals) {
        return new Context(
                problems,
                Entries.of(List.of(), problems),
                true,
                Optional.empty(),
                Optional.empty(),
                OptionalInt.of(decimals));
    }

    static Context before(Problems problems, Entries entries, boolean whole) {
        return new Context(problems, entries, whole, Optional.empty(), Optional.empty(), OptionalInt.empty());
    }

    Context with(Map<String, Double> strengthWords, Map<String, Double> rateWords) {
        return new Context(problems, entries, whole, Optional.of(strengthWords), Optional.of(rateWords), decimals);
    }

    Context withDecimals(int count) {
        return new Context(problems, entries, whole, strengths, rates, OptionalInt.of(count));
    }
}
