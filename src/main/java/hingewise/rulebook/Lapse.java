package hingewise.rulebook;

import java.util.Map;

/**
 * A way a phone changes by itself while nobody works on it: in transit, stored wet, in use.
 *
 * @param brings causes it may bring about, and the chance of each
 * @param clears causes it may clear, and the chance of each
 */
public record Lapse(String id, String label, Map<String, Double> brings, Map<String, Double> clears, Grounds grounds) {
    public Lapse {
        brings = Ordered.copyOf(brings);
        clears = Ordered.copyOf(clears);
    }
}
