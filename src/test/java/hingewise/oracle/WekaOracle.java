package hingewise.oracle;

import hingewise.inference.Evidence;
import hingewise.inference.Network;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import weka.classifiers.bayes.net.BIFReader;
import weka.classifiers.bayes.net.EditableBayesNet;
import weka.classifiers.bayes.net.MarginCalculator;

/**
 * Weka's junction tree (weka-stable 3.8.6). It wants small tables: give it {@code Solver.expanded()} or a network
 * whose noisy-ORs have few parents.
 */
public final class WekaOracle {
    private final Flat flat;
    private final EditableBayesNet net;
    private final Map<String, Integer> index = new LinkedHashMap<>();

    /** Builds the network in Weka's terms. */
    public WekaOracle(Network network, Evidence evidence) {
        flat = Flat.of(network, evidence);
        try {
            net = new EditableBayesNet(true);
            build();
        } catch (Exception failure) {
            throw new IllegalStateException("Weka cannot hold this network", failure);
        }
    }

    private void build() throws Exception {
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
    }

    /** Posteriors of every variable and P(evidence). */
    public static Answer solve(Network network, Evidence evidence) {
        return new WekaOracle(network, evidence).solve();
    }

    /** The same for the network built. */
    public Answer solve() {
        try {
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
        } catch (Exception failure) {
            throw new IllegalStateException("Weka cannot solve this network", failure);
        }
    }

    /**
     * Reads a network in XMLBIF 0.3 with Weka's own reader and solves it.
     *
     * @param observations what is observed, each as {@code NAME=OUTCOME}
     * @return the chance of the outcome "yes" of every variable of the file
     */
    public static Map<String, Double> solveFile(String xml, List<String> observations) {
        try {
            BIFReader reader = new BIFReader().processString(xml);
            EditableBayesNet net = new EditableBayesNet(reader);
            MarginCalculator calculator = new MarginCalculator();
            calculator.calcMargins(net);
            for (String observation : observations) {
                int split = observation.lastIndexOf('=');
                int node = net.getNode(observation.substring(0, split));
                calculator.setEvidence(node, valueOf(net, node, observation.substring(split + 1)));
            }
            Map<String, Double> probabilities = new LinkedHashMap<>();
            for (int node = 0; node < net.getNrOfNodes(); node++) {
                probabilities.put(net.getNodeName(node), calculator.getMargin(node)[valueOf(net, node, "yes")]);
            }
            return probabilities;
        } catch (Exception failure) {
            throw new IllegalStateException("Weka cannot read or solve this file", failure);
        }
    }

    private static int valueOf(EditableBayesNet net, int node, String outcome) {
        for (int value = 0; value < net.getCardinality(node); value++) {
            if (net.getNodeValue(node, value).equals(outcome)) {
                return value;
            }
        }
        throw new IllegalArgumentException(net.getNodeName(node) + " has no outcome " + outcome);
    }
}
