package hingewise.oracle;

import com.github.thorbenlindhauer.factor.DiscreteFactor;
import com.github.thorbenlindhauer.inference.VariableEliminationInferencer;
import com.github.thorbenlindhauer.inference.variableelimination.MinFillEliminationStrategy;
import com.github.thorbenlindhauer.network.DiscreteModelBuilderImpl;
import com.github.thorbenlindhauer.network.GraphicalModel;
import com.github.thorbenlindhauer.variable.DiscreteVariable;
import com.github.thorbenlindhauer.variable.Scope;
import hingewise.inference.Evidence;
import hingewise.inference.Network;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Variable elimination of the graphical-models library (graphmod-inference-engine 0.1.0). It eliminates anew for each
 * variable asked for. Findings are given to it as tables over one variable.
 */
public final class GraphmodOracle {
    private final GraphicalModel<DiscreteFactor> model;

    /** Builds the network in the library's terms. */
    public GraphmodOracle(Network network, Evidence evidence) {
        Flat flat = Flat.of(network, Evidence.none());
        List<DiscreteVariable> variables = new ArrayList<>();
        for (Flat.Node node : flat.nodes()) {
            variables.add(new DiscreteVariable(node.name(), 2));
        }
        DiscreteModelBuilderImpl builder = new DiscreteModelBuilderImpl(new Scope(variables));
        flat.nodes().forEach(node -> add(builder, node));
        evidence.findings()
                .forEach((name, finding) ->
                        builder.factor().scope(name).basedOnTable(new double[] {finding.ifNo(), finding.ifYes()}));
        model = builder.build();
    }

    /** Posteriors of the variables asked for. */
    public static Map<String, Double> solve(Network network, Evidence evidence, Collection<String> asked) {
        return new GraphmodOracle(network, evidence).solve(asked);
    }

    /** The same for the network built. */
    public Map<String, Double> solve(Collection<String> asked) {
        VariableEliminationInferencer inferencer =
                new VariableEliminationInferencer(model, new MinFillEliminationStrategy());
        Map<String, Double> probabilities = new LinkedHashMap<>();
        for (String name : asked) {
            Scope query = model.getScope().subScope(name);
            probabilities.put(name, inferencer.jointProbability(query, new int[] {1}));
        }
        return probabilities;
    }

    /** The library sorts a table's variables by name and lets the first vary fastest. */
    private static void add(DiscreteModelBuilderImpl builder, Flat.Node node) {
        List<String> sorted = new ArrayList<>(node.parents());
        sorted.add(node.name());
        sorted.sort(null);
        double[] cells = new double[1 << sorted.size()];
        for (int cell = 0; cell < cells.length; cell++) {
            int row = 0;
            for (String parent : node.parents()) {
                row = 2 * row + (cell >> sorted.indexOf(parent) & 1);
            }
            boolean yes = (cell >> sorted.indexOf(node.name()) & 1) == 1;
            cells[cell] = yes ? node.yes()[row] : 1 - node.yes()[row];
        }
        builder.factor().scope(sorted.toArray(String[]::new)).basedOnTable(cells);
    }
}
