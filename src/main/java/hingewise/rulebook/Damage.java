package hingewise.rulebook;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * How an act may bring about one cause that was absent before. Each chance acts by itself: the cause stays away only if
 * none of those that apply brings it about.
 *
 * @param always the chance that holds whatever is the matter, in 0–1
 * @param where by cause that is present before the act, the chance that it adds, in 0–1
 */
public record Damage(double always, Map<String, Double> where) {
    public Damage {
        where = Ordered.copyOf(where);
    }

    /**
     * P(present after | absent before).
     *
     * @param present whether another cause is present before the act
     */
    public double chance(Predicate<String> present) {
        double not = 1 - always;
        for (Map.Entry<String, Double> state : where.entrySet()) {
            not *= present.test(state.getKey()) ? 1 - state.getValue() : 1;
        }
        return 1 - not;
    }

    /** The same where no other causes than these can be present. */
    public Damage among(Set<String> causes) {
        return new Damage(
                always,
                where.entrySet().stream()
                        .filter(e -> causes.contains(e.getKey()))
                        .collect(Collectors.toMap(
                                Map.Entry::getKey, Map.Entry::getValue, (a, b) -> a, LinkedHashMap::new)));
    }
}
