package hingewise.oracle;

import hingewise.inference.Evidence;
import hingewise.inference.Network;
import java.util.LinkedHashMap;
import java.util.Map;
import weka.classifiers.bayes.net.EditableBayesNet;
import weka.classifiers.bayes.net.MarginCalculator;

/**
 * Weka's junction tree (weka-stable 3.8.6). It wants small tables: give it {@code Solver.expanded()} or a network
 * whose noisy-ORs have few parents.
 */
public final class WekaOracle {
    private WekaOracle() {}

    /** Posteriors of every variable and P(evidence). */
    public static Answer solve(Network network, Evidence evidence) {
        try {
            return solve(Flat.of(network, evidence));
        } catch (Exception failure) {
            throw new IllegalStateException("Weka cannot solve this network", failure);
        }
    }

    private static Answer solve(Flat flat) throws Exception {
        EditableBayesNet net = new EditableBayesNet(true);
        Map<String, Integer> index = new LinkedHashMap<>();
        for (Flat.Node node : flat.nodes()) {
            net.addNode(node.name(), 2);
            index.put(node.name(), index.size());
        }
        for (Flat.Node node : flat.nodes()) {
            for (String parent : node.parents()) {
                net.addArc(parent, node.name());
            }
            double[][] rows = new double[node.yes().length][];
            for (int row = 0; row < rows.length; row++) {
                rows[row] = new double[] {1 - node.yes()[row], node.yes()[row]};
            }
            net.setDistribution(node.name(), rows);
        }
        MarginCalculator calculator = new MarginCalculator();
        calculator.calcMargins(net);
        double log = flat.logScale();
        for (Map.Entry<String, Boolean> observation : flat.observed().entrySet()) {
            int node = index.get(observation.getKey());
            int value = observation.getValue() ? 1 : 0;
            log += Math.log(calculator.getMargin(node)[value]);
            calculator.setEvidence(node, value);
        }
        Map<String, Double> probabilities = new LinkedHashMap<>();
        index.forEach((name, node) -> probabilities.put(name, calculator.getMargin(node)[1]));
        return new Answer(log, probabilities);
    }
}
