package hingewise.inference;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
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
    private final double logEvidence;
    private final Evidence evidence;
    private final List<String> names = new ArrayList<>();
    private final Set<String> certain = new LinkedHashSet<>();
    private final int[] steps;
    private final double[] chances;

    CombinationSearch(Pass base, double[] marginals, double logEvidence, Evidence evidence, Set<String> over) {
        this.base = base;
        this.logEvidence = logEvidence;
        this.evidence = evidence;
        Plan plan = base.plan;
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

    /**
     * Values that no assignment worth finding can have, because their posterior alone is too small, are ruled out first;
     * what is left is usually much smaller and gets a plan of its own.
     */
    List<Combination> best(int count) {
        double floor = climb(count) * SLACK;
        Map<Integer, Boolean> ruled = new HashMap<>();
        List<Integer> open = new ArrayList<>();
        boolean[] start = new boolean[steps.length];
        Problem problem = base.plan.model.problem;
        for (int i = 0; i < steps.length; i++) {
            start[i] = chances[i] >= .5;
            if (chances[i] < floor || 1 - chances[i] < floor) {
                ruled.put(problem.indexOf(names.get(i)), start[i]);
            } else {
                open.add(i);
            }
        }
        open.sort(Comparator.comparingDouble(i -> Math.abs(chances[i] - .5)));
        Plan plan = new Plan(Ordering.search(problem.with(ruled), Ordering.MOST_TRIES));
        int[] places = open.stream()
                .mapToInt(i -> plan.step[plan.model.variable[problem.indexOf(names.get(i))]])
                .toArray();
        return search(new Pass(plan, evidence), places, open, start, count, floor);
    }

    private List<Combination> search(
            Pass pass, int[] places, List<Integer> open, boolean[] start, int count, double floor) {
        double[] weights = pass.weights.clone();
        for (int v : places) {
            pass.setMaximised(v, true);
        }
        PriorityQueue<Node> queue = new PriorityQueue<>(Comparator.comparingDouble(node -> -node.bound()));
        queue.add(new Node(start, 0, Math.exp(pass.up() - logEvidence)));
        List<Combination> found = new ArrayList<>();
        while (!queue.isEmpty() && found.size() < count) {
            Node node = queue.remove();
            int depth = node.depth();
            if (depth == places.length) {
                found.add(combination(node.values(), node.bound()));
                continue;
            }
            for (int d = 0; d < places.length; d++) {
                if (d < depth) {
                    clamp(pass, weights, places[d], node.values()[open.get(d)]);
                } else {
                    pass.setWeights(places[d], weights[2 * places[d]], weights[2 * places[d] + 1]);
                }
            }
            for (int side = 0; side < 2; side++) {
                boolean[] values = node.values().clone();
                values[open.get(depth)] ^= side == 1;
                clamp(pass, weights, places[depth], values[open.get(depth)]);
                double bound = Math.exp(pass.up() - logEvidence);
                if (bound > 0 && bound >= floor) {
                    queue.add(new Node(values, depth + 1, bound));
                }
            }
        }
        return found;
    }

    private static void clamp(Pass pass, double[] weights, int v, boolean yes) {
        pass.setWeights(v, yes ? 0 : weights[2 * v], yes ? weights[2 * v + 1] : 0);
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
                clamp(pass, base.weights, steps[i], values[i]);
            }
            double here = Math.exp(pass.up() - logEvidence);
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
