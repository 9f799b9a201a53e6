package hingewise.inference;

import java.util.Set;

/**
 * One assignment of a set of variables.
 *
 * @param yes those that are yes; the others of the set are no
 * @param probability exact probability of this assignment given the evidence, everything else summed out
 */
public record Combination(Set<String> yes, double probability) {}
