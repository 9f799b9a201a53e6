package hingewise.diagnosis;

import java.util.Set;

/**
 * Exactly these causes and no others.
 *
 * @param probability chance given all entries, in 0–1
 */
public record LikelySet(Set<String> causes, double probability) {}
