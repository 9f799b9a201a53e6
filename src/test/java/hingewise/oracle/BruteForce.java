package hingewise.oracle;

import hingewise.inference.Evidence;
import hingewise.inference.Finding;
import hingewise.inference.Link;
import hingewise.inference.Mechanism;
import hingewise.inference.Network;
import hingewise.inference.NoisyOr;
import hingewise.inference.Table;
import hingewise.inference.Variable;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Sums over every assignment of all variables: slow, and too simple to be wrong. */
public final class BruteForce {
    private final List<Variable> variables;
    private final Map<String, Integer> index = new HashMap<>();
    private final double[] weights;
    private final double total;
    private final Map<String, Double> probabilities = new LinkedHashMap<>();

    /** Enumerates a network of at most 22 variables. */
    public BruteForce(Network network, Evidence evidence) {
        variables = network.variables();
        if (variables.size() > 22) {
            throw new IllegalArgumentException("too many variables to enumerate: " + variables.size());
        }
        variables.forEach(variable -> index.put(variable.name(), index.size()));
        weights = new double[1 << variables.size()];
        descend(0, 0, 1, evidence);
        double sum = 0;
        for (double weight : weights) {
            sum += weight;
        }
        total = sum;
        double[] sums = new double[variables.size()];
        for (int bits = 0; bits < weights.length; bits++) {
            for (int v = 0; v < sums.length; v++) {
                sums[v] += (bits >> v & 1) == 1 ? weights[bits] : 0;
            }
        }
        for (int v = 0; v < sums.length; v++) {
            probabilities.put(variables.get(v).name(), sums[v] / total);
        }
    }

    private void descend(int depth, int bits, double weight, Evidence evidence) {
        if (weight == 0) {
            return;
        }
        if (depth == variables.size()) {
            weights[bits] = weight;
            return;
        }
        Variable variable = variables.get(depth);
        Finding finding = evidence.findings().get(variable.name());
        double no = no(variable.mechanism(), bits);
        double yes = yes(variable.mechanism(), bits);
        descend(depth + 1, bits, weight * no * (finding == null ? 1 : finding.ifNo()), evidence);
        descend(depth + 1, bits | 1 << depth, weight * yes * (finding == null ? 1 : finding.ifYes()), evidence);
    }

    private double no(Mechanism mechanism, int bits) {
        if (mechanism instanceof NoisyOr or) {
            double no = 1 - or.leak();
            for (Link link : or.links()) {
                no *= is(bits, link.parent()) ? 1 - link.strength() : 1;
            }
            return no;
        }
        return 1 - yes(mechanism, bits);
    }

    private double yes(Mechanism mechanism, int bits) {
        if (mechanism instanceof NoisyOr or) {
            double yes = or.leak();
            for (Link link : or.links()) {
                yes += is(bits, link.parent()) ? (1 - yes) * link.strength() : 0;
            }
            return yes;
        }
        Table table = (Table) mechanism;
        int row = 0;
        for (String parent : table.parents()) {
            row = 2 * row + (is(bits, parent) ? 1 : 0);
        }
        return table.yes(row);
    }

    private boolean is(int bits, String name) {
        return (bits >> index.get(name) & 1) == 1;
    }

    /** P(evidence). */
    public double evidence() {
        return total;
    }

    /** Posterior of every variable. */
    public Map<String, Double> probabilities() {
        return probabilities;
    }

    /** P(assignment | evidence) of every assignment of some variables, each as the set of those that are yes. */
    public Map<Set<String>, Double> combinations(Set<String> over) {
        List<String> names = new ArrayList<>(over);
        double[] sums = new double[1 << names.size()];
        for (int bits = 0; bits < weights.length; bits++) {
            int cell = 0;
            for (int i = 0; i < names.size(); i++) {
                cell |= is(bits, names.get(i)) ? 1 << i : 0;
            }
            sums[cell] += weights[bits];
        }
        Map<Set<String>, Double> found = new HashMap<>();
        for (int cell = 0; cell < sums.length; cell++) {
            Set<String> yes = new LinkedHashSet<>();
            for (int i = 0; i < names.size(); i++) {
                if ((cell >> i & 1) == 1) {
                    yes.add(names.get(i));
                }
            }
            found.put(yes, sums[cell] / total);
        }
        return found;
    }
}
