package hingewise.inference;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * One run of a plan with given weights: upwards, summing out variable after variable, and downwards, which yields every
 * variable's marginal (Lauritzen and Spiegelhalter 1988, JRSS B 50:157-224, in the division form of Jensen, Lauritzen
 * and Olesen 1990). Nothing is ever subtracted, so small probabilities keep their digits.
 *
 * <p>Weights may be changed between runs; the next upward run redoes only what they touch.
 */
final class Pass {
    private static final double TOO_SMALL = 0x1p-64;
    private static final double TOO_LARGE = 0x1p+64;

    final Plan plan;
    final double[] weights;
    private final double[][] tables;
    private final double[][] results;
    private final int[] exponents;
    private final boolean[] newInput;
    private final boolean[] newWeight;
    private final boolean[] maximised;
    /** Logarithm of the likelihoods of certain findings, which belong to no weight. */
    private final double logCertain;

    /** A run with the findings put into the weights. */
    Pass(Plan plan, Evidence evidence) {
        this.plan = plan;
        weights = plan.weights.clone();
        tables = new double[plan.count][];
        results = new double[plan.count][];
        exponents = new int[plan.count];
        newInput = new boolean[plan.count];
        newWeight = new boolean[plan.count];
        maximised = new boolean[plan.count];
        Arrays.fill(newInput, true);
        logCertain = weigh(evidence);
    }

    private double weigh(Evidence evidence) {
        double log = 0;
        Problem problem = plan.model.problem;
        for (int i = 0; i < problem.size(); i++) {
            Finding finding = evidence.findings().get(problem.kept().get(i).name());
            if (finding == null) {
                if (problem.roles()[i] == Role.FALLING) {
                    multiplyWeights(plan.step[plan.model.standIn[i]], 1, 0);
                }
                continue;
            }
            double ifYes = finding.ifYes();
            double ifNo = finding.ifNo();
            switch (problem.roles()[i]) {
                case YES -> log += Math.log(ifYes);
                case NO -> log += Math.log(ifNo);
                case FALLING -> multiplyWeights(plan.step[plan.model.standIn[i]], ifYes, ifNo - ifYes);
                case FREE -> multiplyWeights(plan.step[plan.model.variable[i]], ifNo, ifYes);
            }
        }
        return log;
    }

    /** A run that starts from the state of another and leaves the other as it is. */
    Pass(Pass other) {
        plan = other.plan;
        weights = other.weights.clone();
        tables = other.tables.clone();
        results = other.results.clone();
        exponents = other.exponents.clone();
        newInput = new boolean[plan.count];
        newWeight = new boolean[plan.count];
        maximised = other.maximised.clone();
        logCertain = other.logCertain;
    }

    void setWeights(int v, double no, double yes) {
        if (weights[2 * v] != no || weights[2 * v + 1] != yes) {
            weights[2 * v] = no;
            weights[2 * v + 1] = yes;
            newWeight[v] = true;
        }
    }

    void multiplyWeights(int v, double no, double yes) {
        setWeights(v, weights[2 * v] * no, weights[2 * v + 1] * yes);
    }

    /** Whether the variable is maximised instead of summed out on the next upward run. */
    void setMaximised(int v, boolean on) {
        if (maximised[v] != on) {
            maximised[v] = on;
            newWeight[v] = true;
        }
    }

    /** Runs upwards; returns the logarithm of P(evidence) under the weights, negative infinity when that is 0. */
    double up() {
        double log = plan.model.logConstant + logCertain;
        int exponent = 0;
        for (int v = 0; v < plan.count; v++) {
            if (newInput[v] || newWeight[v]) {
                step(v, newInput[v]);
                newInput[v] = false;
                newWeight[v] = false;
                if (plan.parent[v] >= 0) {
                    newInput[plan.parent[v]] = true;
                }
            }
            exponent += exponents[v];
            if (plan.parent[v] < 0) {
                log += Math.log(results[v][0]);
            }
        }
        return log + exponent * Math.log(2);
    }

    private void step(int v, boolean refill) {
        int half = 1 << plan.separator[v].length;
        if (refill) {
            tables[v] = new double[2 * half];
            fill(v, tables[v]);
            exponents[v] = 0;
        }
        double[] result = new double[half];
        results[v] = result;
        double largest = reduce(v, tables[v], result);
        if (largest > 0 && (largest < TOO_SMALL || largest > TOO_LARGE)) {
            rescale(v, result, Math.getExponent(largest));
        }
    }

    private void fill(int v, double[] table) {
        boolean empty = true;
        for (int child : plan.children[v]) {
            if (empty) {
                plan.upwards[child].spread(table, results[child]);
                empty = false;
            } else {
                plan.upwards[child].multiply(table, results[child]);
            }
        }
        Projection place = plan.constantPlace[v];
        if (place == null) {
            if (empty) {
                Arrays.fill(table, 1);
            }
        } else if (empty) {
            place.spread(table, plan.constant[v]);
        } else {
            place.multiply(table, plan.constant[v]);
        }
    }

    private double reduce(int v, double[] table, double[] result) {
        int half = result.length;
        double no = weights[2 * v];
        double yes = weights[2 * v + 1];
        double largest = 0;
        for (int i = 0; i < half; i++) {
            double a = no * table[i];
            double b = yes * table[half + i];
            result[i] = maximised[v] ? Math.max(a, b) : a + b;
            largest = Math.max(largest, result[i]);
        }
        return largest;
    }

    /** Powers of two, so that nothing is rounded; a new table, since the old one may be shared. */
    private void rescale(int v, double[] result, int exponent) {
        double factor = Math.scalb(1.0, -exponent);
        double[] table = tables[v].clone();
        for (int i = 0; i < table.length; i++) {
            table[i] *= factor;
        }
        for (int i = 0; i < result.length; i++) {
            result[i] *= factor;
        }
        tables[v] = table;
        exponents[v] += exponent;
    }

    /**
     * Runs downwards after an upward run without maximising. Returns for each variable the total with the variable set
     * to no and to yes, its own weights left out, both up to one factor per variable.
     */
    double[] down() {
        double[] marginals = new double[2 * plan.count];
        double[][] fromAbove = new double[plan.count][];
        double[] belief = new double[1 << plan.largest];
        for (int v = plan.count - 1; v >= 0; v--) {
            double[] table = tables[v];
            double @Nullable [] above = fromAbove[v];
            int half = table.length / 2;
            marginals[2 * v] = dot(table, 0, above, half);
            marginals[2 * v + 1] = dot(table, half, above, half);
            if (plan.children[v].length > 0) {
                weigh(table, above, v, belief);
                for (int child : plan.children[v]) {
                    double[] ratio = new double[results[child].length];
                    plan.upwards[child].sum(belief, ratio);
                    divide(ratio, results[child]);
                    fromAbove[child] = ratio;
                }
            }
            fromAbove[v] = null;
        }
        return marginals;
    }

    private static double dot(double[] table, int from, double @Nullable [] above, int half) {
        if (above == null) {
            return table[from];
        }
        double sum = 0;
        for (int i = 0; i < half; i++) {
            sum += table[from + i] * above[i];
        }
        return sum;
    }

    private void weigh(double[] table, double @Nullable [] above, int v, double[] belief) {
        int half = table.length / 2;
        double no = weights[2 * v];
        double yes = weights[2 * v + 1];
        for (int i = 0; i < half; i++) {
            double scale = above == null ? 1 : above[i];
            belief[i] = table[i] * scale * no;
            belief[half + i] = table[half + i] * scale * yes;
        }
    }

    /** 0 / 0 counts as 0: where the result was 0, everything below it is. */
    private static void divide(double[] ratio, double[] result) {
        for (int i = 0; i < ratio.length; i++) {
            ratio[i] = result[i] == 0 ? 0 : ratio[i] / result[i];
        }
    }

    /** Chance that the variable is yes given its marginal and its weights. */
    double posterior(double[] marginals, int v) {
        double no = marginals[2 * v] * weights[2 * v];
        double yes = marginals[2 * v + 1] * weights[2 * v + 1];
        return yes / (no + yes);
    }

    /** Natural logarithm of its odds given its marginal and its weights. */
    double logOdds(double[] marginals, int v) {
        return Math.log(marginals[2 * v + 1] * weights[2 * v + 1]) - Math.log(marginals[2 * v] * weights[2 * v]);
    }

    /** For sampling downwards: weight of the variable's value given the cell of its separator. */
    double conditional(int v, boolean yes, int cell) {
        return yes ? tables[v][tables[v].length / 2 + cell] * weights[2 * v + 1] : tables[v][cell] * weights[2 * v];
    }
}
