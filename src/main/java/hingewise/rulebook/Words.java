package hingewise.rulebook;

import java.util.List;
import java.util.Map;

/**
 * Words for numbers.
 *
 * @param chances words for a chance, ascending by {@code upTo}, the last reaching 1
 * @param strengths words for how often a cause shows a sign
 * @param rates words for how common something is
 */
public record Words(List<Chance> chances, Map<String, Double> strengths, Map<String, Double> rates, Grounds grounds) {
    public Words {
        chances = List.copyOf(chances);
        strengths = Ordered.copyOf(strengths);
        rates = Ordered.copyOf(rates);
    }

    /** A word for every chance below {@code upTo} and at or above the one before. */
    public record Chance(double upTo, String word) {}

    /** The word for a chance in 0–1. */
    public String of(double chance) {
        return chances.stream()
                .filter(c -> chance < c.upTo())
                .findFirst()
                .orElse(chances.get(chances.size() - 1))
                .word();
    }
}
