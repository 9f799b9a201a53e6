package hingewise.oracle;

import hingewise.inference.Evidence;
import hingewise.inference.Finding;
import hingewise.inference.Hard;
import hingewise.inference.Network;
import hingewise.inference.NoisyOr;
import hingewise.inference.Table;
import hingewise.inference.Variable;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A network as the general-purpose libraries take it: full tables and certain observations only. A report becomes a
 * child of what it is about that is observed to be yes.
 *
 * @param nodes parents first
 * @param observed which nodes are known, and their values
 * @param logScale to be added to the logarithm of the library's P(observed), because likelihoods above 1 were scaled
 */
record Flat(List<Node> nodes, Map<String, Boolean> observed, double logScale) {
    /** {@code yes} has P(yes) for each row of the parents, the first parent being the most significant bit. */
    record Node(String name, List<String> parents, double[] yes) {}

    static Flat of(Network network, Evidence evidence) {
        List<Node> nodes = new ArrayList<>();
        Map<String, Boolean> observed = new LinkedHashMap<>();
        double logScale = 0;
        for (Variable variable : network.variables()) {
            nodes.add(new Node(variable.name(), variable.mechanism().parents(), rows(variable)));
        }
        for (Map.Entry<String, Finding> entry : evidence.findings().entrySet()) {
            Finding finding = entry.getValue();
            if (finding instanceof Hard hard) {
                observed.put(entry.getKey(), hard.yes());
            } else {
                double scale = Math.max(1, Math.max(finding.ifYes(), finding.ifNo()));
                String report = "report on " + entry.getKey();
                nodes.add(new Node(
                        report, List.of(entry.getKey()), new double[] {finding.ifNo() / scale, finding.ifYes() / scale
                        }));
                observed.put(report, true);
                logScale += Math.log(scale);
            }
        }
        return new Flat(nodes, observed, logScale);
    }

    private static double[] rows(Variable variable) {
        double[] yes = new double[1 << variable.mechanism().parents().size()];
        for (int row = 0; row < yes.length; row++) {
            if (variable.mechanism() instanceof Table table) {
                yes[row] = table.yes(row);
            } else {
                NoisyOr or = (NoisyOr) variable.mechanism();
                yes[row] = or.leak();
                for (int p = 0; p < or.links().size(); p++) {
                    boolean on = (row >> (or.links().size() - 1 - p) & 1) == 1;
                    yes[row] += on ? (1 - yes[row]) * or.links().get(p).strength() : 0;
                }
            }
        }
        return yes;
    }
}
