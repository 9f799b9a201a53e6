package hingewise.diagnosis;

import java.util.Set;

/**
 * Exactly these of the causes that are likely enough to matter, whatever holds of the rest.
 *
 * @param causes ids of those that are there; empty when none of them is
 * @param probability chance given all entries, in 0–1
 */
public record LikelySet(Set<String> causes, double probability) {}
