package hingewise.inference;

import java.util.ArrayList;
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
        boolean[][] values = new boolean[plan.count][count];
        for (int v = plan.count - 1; v >= 0; v--) {
            int[] separator = plan.separator[v];
            for (int i = 0; i < count; i++) {
                int cell = 0;
                for (int u : separator) {
                    cell = 2 * cell + (values[u][i] ? 1 : 0);
                }
                double no = pass.conditional(v, false, cell);
                double yes = pass.conditional(v, true, cell);
                values[v][i] = random.nextDouble() * (no + yes) < yes;
            }
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
                    boolean[] own = values[plan.step[plan.model.variable[k]]];
                    for (int i = 0; i < count; i++) {
                        column.set(i, own[i]);
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

    private static Map<String, Boolean> parents(Variable variable, Map<String, BitSet> columns, int draw) {
        Map<String, Boolean> parents = new LinkedHashMap<>();
        for (String parent : variable.mechanism().parents()) {
            BitSet column = columns.get(parent);
            parents.put(parent, column != null && column.get(draw));
        }
        return parents;
    }
}
