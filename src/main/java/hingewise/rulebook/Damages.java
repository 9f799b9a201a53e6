package hingewise.rulebook;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What an act may bring about.
 *
 * @param always causes and the chance that the act brings about each, in .001–.999
 * @param where by cause that must be present before the act, the causes it may then bring about and the chance of each,
 *     in .001–.999
 */
public record Damages(Map<String, Double> always, Map<String, Map<String, Double>> where) {
    /** On how many others a cause that one act brings about may depend: a table then has four variables. */
    public static final int MOST_STATES = 2;

    public Damages {
        always = Ordered.copyOf(always);
        Map<String, Map<String, Double>> copy = new LinkedHashMap<>();
        where.forEach((present, brought) -> copy.put(present, Ordered.copyOf(brought)));
        where = Ordered.copyOf(copy);
    }

    /** Damage that hangs on nothing. */
    public static Damages always(Map<String, Double> chances) {
        return new Damages(chances, Map.of());
    }

    public boolean isEmpty() {
        return causes().isEmpty();
    }

    /** The causes that may be brought about, in the order written. */
    public Set<String> causes() {
        Set<String> causes = new LinkedHashSet<>(always.keySet());
        where.values().forEach(brought -> causes.addAll(brought.keySet()));
        return causes;
    }

    /** How one cause may be brought about; with no chance if it is not named. */
    public Damage to(String cause) {
        Map<String, Double> states = new LinkedHashMap<>();
        where.forEach((present, brought) ->
                Optional.ofNullable(brought.get(cause)).ifPresent(chance -> states.put(present, chance)));
        return new Damage(always.getOrDefault(cause, 0.0), states);
    }
}
