package hingewise.rulebook;

import java.util.Map;
import java.util.Set;

/**
 * A warning that must be seen.
 *
 * @param stops whether work stops until it is dealt with
 * @param observations any of these reported "yes" brings it up
 * @param causes any of these at or above its chance brings it up
 * @param access proposing to open any of these brings it up
 */
public record Caution(
        String id,
        String text,
        boolean stops,
        Set<String> observations,
        Map<String, Double> causes,
        Set<String> access,
        Grounds grounds) {
    public Caution {
        observations = Ordered.copyOf(observations);
        causes = Ordered.copyOf(causes);
        access = Ordered.copyOf(access);
    }
}
