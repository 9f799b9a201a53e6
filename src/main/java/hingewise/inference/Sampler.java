package hingewise.inference;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.random.RandomGenerator;

/** Joint draws: variables are drawn in the reverse of the order in which they were summed out, each given the later. */
final class Sampler {
    private final Plan plan;
    private final Pass pass;
    private final Evidence evidence;

    Sampler(Plan plan, Pass pass, Evidence evidence) {
        this.plan = plan;
        this.pass = pass;
        this.evidence = evidence;
    }

    List<Map<String, Boolean>> draw(RandomGenerator random, int count) {
        List<Map<String, Boolean>> draws = new ArrayList<>();
        boolean[] values = new boolean[plan.count];
        for (int i = 0; i < count; i++) {
            draws.add(Collections.unmodifiableMap(one(random, values)));
        }
        return draws;
    }

    private Map<String, Boolean> one(RandomGenerator random, boolean[] values) {
        for (int v = plan.count - 1; v >= 0; v--) {
            int cell = 0;
            for (int u : plan.separator[v]) {
                cell = 2 * cell + (values[u] ? 1 : 0);
            }
            double no = pass.conditional(v, false, cell);
            double yes = pass.conditional(v, true, cell);
            values[v] = random.nextDouble() * (no + yes) < yes;
        }
        Map<String, Boolean> draw = new LinkedHashMap<>();
        Problem problem = plan.model.problem;
        for (int i = 0; i < problem.size(); i++) {
            Variable variable = problem.kept().get(i);
            draw.put(
                    variable.name(),
                    switch (problem.roles()[i]) {
                        case YES -> true;
                        case NO -> false;
                        case FREE -> values[plan.step[plan.model.variable[i]]];
                        case FALLING -> falling(variable, draw, random);
                    });
        }
        return draw;
    }

    /** A variable that the plan did without: drawn given its parents and its own report. */
    private boolean falling(Variable variable, Map<String, Boolean> parents, RandomGenerator random) {
        NoisyOr or = (NoisyOr) variable.mechanism();
        double no = 1 - or.leak();
        for (Link link : or.links()) {
            if (Boolean.TRUE.equals(parents.get(link.parent()))) {
                no *= 1 - link.strength();
            }
        }
        Finding finding = evidence.findings().get(variable.name());
        double ifYes = finding == null ? 1 : finding.ifYes();
        double ifNo = finding == null ? 1 : finding.ifNo();
        double yes = ifYes * (1 - no);
        return random.nextDouble() * (yes + ifNo * no) < yes;
    }

    /** The same draws variable by variable: for each kept variable the draws in which it is yes. */
    Map<String, BitSet> columns(RandomGenerator random, int count) {
        int[][] values = new int[plan.count][count];
        int[] cells = new int[count];
        for (int v = plan.count - 1; v >= 0; v--) {
            Arrays.fill(cells, 0);
            for (int u : plan.separator[v]) {
                int[] given = values[u];
                for (int i = 0; i < count; i++) {
                    cells[i] = 2 * cells[i] + given[i];
                }
            }
            draw(v, cells, values[v], random);
        }
        Map<String, BitSet> columns = new LinkedHashMap<>();
        Problem problem = plan.model.problem;
        for (int k = 0; k < problem.size(); k++) {
            Variable variable = problem.kept().get(k);
            BitSet column = new BitSet(count);
            switch (problem.roles()[k]) {
                case YES -> column.set(0, count);
                case NO -> column.clear();
                case FREE -> {
                    int[] own = values[plan.step[plan.model.variable[k]]];
                    for (int i = 0; i < count; i++) {
                        if (own[i] == 1) {
                            column.set(i);
                        }
                    }
                }
                case FALLING -> {
                    for (int i = 0; i < count; i++) {
                        column.set(i, falling(variable, parents(variable, columns, i), random));
                    }
                }
            }
            columns.put(variable.name(), column);
        }
        return columns;
    }

    private void draw(int v, int[] cells, int[] values, RandomGenerator random) {
        int all = 1 << plan.separator[v].length;
        if (all > cells.length) {
            for (int i = 0; i < cells.length; i++) {
                double yes = pass.conditional(v, true, cells[i]);
                values[i] = random.nextDouble() * (pass.conditional(v, false, cells[i]) + yes) < yes ? 1 : 0;
            }
            return;
        }
        // With few cells each is met many times.
        double[] yes = new double[all];
        double[] either = new double[all];
        for (int cell = 0; cell < all; cell++) {
            yes[cell] = pass.conditional(v, true, cell);
            either[cell] = pass.conditional(v, false, cell) + yes[cell];
        }
        for (int i = 0; i < cells.length; i++) {
            values[i] = random.nextDouble() * either[cells[i]] < yes[cells[i]] ? 1 : 0;
        }
    }

    private static Map<String, Boolean> parents(Variable variable, Map<String, BitSet> columns, int draw) {
        Map<String, Boolean> parents = new LinkedHashMap<>();
        for (String parent : variable.mechanism().parents()) {
            BitSet column = columns.get(parent);
            parents.put(parent, column != null && column.get(draw));
        }
        return parents;
    }
}
