package hingewise.inference;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.Set;

/**
 * The most probable assignments of some variables with the others summed out. Best-first search; the bound of a partial
 * assignment comes from summing out in the plan's order while maximising the open variables, which can only overstate
 * (Park and Darwiche 2003, Solving MAP exactly using systematic search). A complete assignment's bound is its exact
 * probability.
 */
final class CombinationSearch {
    /** Room for rounding when something is discarded because better is known. */
    private static final double SLACK = 1 - 1e-9;

    private record Node(boolean[] values, int depth, double bound) {}

    private final Pass base;
    private final double logTotal;
    private final List<String> names = new ArrayList<>();
    private final Set<String> certain = new LinkedHashSet<>();
    private final int[] steps;
    private final double[] chances;

    CombinationSearch(Plan plan, Pass base, double[] marginals, double logTotal, Set<String> over) {
        this.base = base;
        this.logTotal = logTotal;
        Problem problem = plan.model.problem;
        List<Integer> open = new ArrayList<>();
        for (String name : over) {
            int i = problem.indexOf(name);
            switch (problem.roles()[i]) {
                case YES -> certain.add(name);
                case NO -> {}
                case FREE -> {
                    names.add(name);
                    open.add(plan.step[plan.model.variable[i]]);
                }
                case FALLING ->
                    throw new IllegalArgumentException(
                            "'" + name + "' is observed; to be part of combinations it must be named as wanted too");
            }
        }
        steps = open.stream().mapToInt(Integer::intValue).toArray();
        chances = Arrays.stream(steps)
                .mapToDouble(v -> base.posterior(marginals, v))
                .toArray();
    }

    List<Combination> best(int count) {
        double floor = climb(count) * SLACK;
        Pass pass = new Pass(base);
        List<Integer> open = new ArrayList<>();
        boolean[] start = new boolean[steps.length];
        for (int i = 0; i < steps.length; i++) {
            start[i] = chances[i] >= .5;
            if (chances[i] < floor || 1 - chances[i] < floor) {
                clamp(pass, i, start[i]);
            } else {
                open.add(i);
                pass.setMaximised(steps[i], true);
            }
        }
        open.sort(Comparator.comparingDouble(i -> Math.abs(chances[i] - .5)));
        return search(pass, open, start, count, floor);
    }

    private List<Combination> search(Pass pass, List<Integer> open, boolean[] start, int count, double floor) {
        PriorityQueue<Node> queue = new PriorityQueue<>(Comparator.comparingDouble(node -> -node.bound()));
        queue.add(new Node(start, 0, bound(pass, open, start, 0)));
        List<Combination> found = new ArrayList<>();
        while (!queue.isEmpty() && found.size() < count) {
            Node node = queue.remove();
            if (node.depth() == open.size()) {
                found.add(combination(node.values(), node.bound()));
                continue;
            }
            for (int side = 0; side < 2; side++) {
                boolean[] values = node.values().clone();
                values[open.get(node.depth())] ^= side == 1;
                double bound = bound(pass, open, values, node.depth() + 1);
                if (bound > 0 && bound >= floor) {
                    queue.add(new Node(values, node.depth() + 1, bound));
                }
            }
        }
        return found;
    }

    private double bound(Pass pass, List<Integer> open, boolean[] values, int depth) {
        for (int d = 0; d < open.size(); d++) {
            int i = open.get(d);
            if (d < depth) {
                clamp(pass, i, values[i]);
            } else {
                pass.setWeights(steps[i], base.weights[2 * steps[i]], base.weights[2 * steps[i] + 1]);
            }
        }
        return Math.exp(pass.up() - logTotal);
    }

    private void clamp(Pass pass, int i, boolean yes) {
        int v = steps[i];
        pass.setWeights(v, yes ? 0 : base.weights[2 * v], yes ? base.weights[2 * v + 1] : 0);
    }

    private Combination combination(boolean[] values, double probability) {
        Set<String> yes = new LinkedHashSet<>(certain);
        for (int i = 0; i < values.length; i++) {
            if (values[i]) {
                yes.add(names.get(i));
            }
        }
        return new Combination(Collections.unmodifiableSet(yes), probability);
    }

    /**
     * A probability that at least {@code count} assignments reach: climbs from the likeliest value of each variable,
     * where one downward run tells the probability of every change of one value. 0 when it cannot tell.
     */
    private double climb(int count) {
        Map<List<Boolean>, Double> seen = new LinkedHashMap<>();
        boolean[] values = new boolean[steps.length];
        for (int i = 0; i < steps.length; i++) {
            values[i] = chances[i] >= .5;
        }
        Pass pass = new Pass(base);
        for (int better = 0; better >= 0; ) {
            for (int i = 0; i < steps.length; i++) {
                clamp(pass, i, values[i]);
            }
            double here = Math.exp(pass.up() - logTotal);
            if (here == 0) {
                return 0;
            }
            seen.put(listOf(values, -1), here);
            better = changes(pass.down(), values, here, seen);
            if (better >= 0) {
                values[better] = !values[better];
            }
        }
        return seen.values().stream()
                .sorted(Comparator.reverseOrder())
                .skip(count - 1L)
                .findFirst()
                .orElse(0.0);
    }

    /** Notes the probability of each single change; returns the best change that gains, or -1. */
    private int changes(double[] found, boolean[] values, double here, Map<List<Boolean>, Double> seen) {
        int best = -1;
        double most = here * (1 + 1e-9);
        for (int i = 0; i < steps.length; i++) {
            int v = steps[i];
            int now = values[i] ? 1 : 0;
            double ratio = found[2 * v + 1 - now]
                    * base.weights[2 * v + 1 - now]
                    / (found[2 * v + now] * base.weights[2 * v + now]);
            double there = here * ratio;
            seen.put(listOf(values, i), there);
            if (there > most) {
                best = i;
                most = there;
            }
        }
        return best;
    }

    private static List<Boolean> listOf(boolean[] values, int changed) {
        List<Boolean> list = new ArrayList<>();
        for (int i = 0; i < values.length; i++) {
            list.add(values[i] ^ i == changed);
        }
        return list;
    }
}
