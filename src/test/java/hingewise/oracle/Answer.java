package hingewise.oracle;

import java.util.Map;

/**
 * What an independent computation found.
 *
 * @param logEvidence natural logarithm of P(evidence)
 * @param probabilities posterior of every variable of the network
 */
public record Answer(double logEvidence, Map<String, Double> probabilities) {}
