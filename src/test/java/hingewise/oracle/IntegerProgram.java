package hingewise.oracle;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.Variable;

/** Least cost under linear constraints on whole numbers, solved by ojAlgo (MIT licence), a library that knows no phones. */
public final class IntegerProgram {
    private final ExpressionsBasedModel model = new ExpressionsBasedModel();
    private final List<Variable> variables = new ArrayList<>();
    private int expressions;

    static {
        // The library greets on standard output when it is first used.
        System.setProperty("shut.up.ojAlgo", "");
    }

    /** A choice of yes or no; its number. */
    public int choice(double cost) {
        variables.add(model.newVariable("v" + variables.size()).binary().weight(cost));
        return variables.size() - 1;
    }

    /** An amount of at least 0; its number. */
    public int amount(double cost) {
        variables.add(model.newVariable("v" + variables.size()).lower(0).weight(cost));
        return variables.size() - 1;
    }

    /** Demands that a weighted sum of variables, by number, is at least this. */
    public void atLeast(double bound, Map<Integer, Double> weights) {
        expression(weights).lower(bound);
    }

    /** Demands that a weighted sum of variables, by number, is exactly this. */
    public void exactly(double value, Map<Integer, Double> weights) {
        expression(weights).level(value);
    }

    private Expression expression(Map<Integer, Double> weights) {
        Expression expression = model.newExpression("e" + expressions++);
        weights.forEach((v, weight) -> expression.set(variables.get(v), weight));
        return expression;
    }

    /**
     * The least cost.
     *
     * @throws AssertionError if the library finds none
     */
    public double least() {
        Optimisation.Result result = model.minimise();
        if (!result.getState().isOptimal()) {
            throw new AssertionError("no optimum: " + result.getState());
        }
        return result.getValue();
    }
}
