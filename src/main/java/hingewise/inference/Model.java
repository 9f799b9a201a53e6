package hingewise.inference;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A problem written as a product of small tables: noisy-ORs divorced into chains of ORs (or folded, as their role
 * allows), certain variables put in. Variables are numbered from 0; those of the problem come first.
 */
final class Model {
    /** A table over a scope, whose first variable is the most significant bit. */
    record Factor(int[] scope, double[] cells) {}

    private static final int NOWHERE = -1;

    final Problem problem;
    final List<Factor> factors = new ArrayList<>();
    /** For each variable of the problem its number here, or -1. */
    final int[] variable;
    /** For each falling variable of the problem the number of what stands in its place, or -1. */
    final int[] standIn;
    /** Names that can be asked for, the chains' auxiliary ones included. */
    final Map<String, Integer> named = new LinkedHashMap<>();

    double logConstant;
    private double[] weights = new double[32];
    private int count;

    Model(Problem problem, int[] rank) {
        this.problem = problem;
        variable = new int[problem.size()];
        standIn = new int[problem.size()];
        for (int i = 0; i < problem.size(); i++) {
            boolean own = problem.roles()[i] == Role.FREE;
            variable[i] = own ? add() : NOWHERE;
            standIn[i] = NOWHERE;
            if (own) {
                named.put(problem.kept().get(i).name(), variable[i]);
            }
        }
        for (int i = 0; i < problem.size(); i++) {
            Mechanism mechanism = problem.kept().get(i).mechanism();
            if (mechanism instanceof NoisyOr or) {
                addOr(i, problem.reduced(or, rank));
            } else if (mechanism instanceof Table table) {
                addTable(i, table);
            }
        }
    }

    int count() {
        return count;
    }

    /** What multiplies each variable whatever the evidence: cell 2v for no, 2v + 1 for yes. */
    double[] weights() {
        return Arrays.copyOf(weights, 2 * count);
    }

    List<int[]> scopes() {
        return factors.stream().map(Factor::scope).toList();
    }

    private int add() {
        if (2 * count + 2 > weights.length) {
            weights = Arrays.copyOf(weights, 2 * weights.length);
        }
        weights[2 * count] = 1;
        weights[2 * count + 1] = 1;
        return count++;
    }

    private void multiply(int[] scope, double... cells) {
        if (scope.length == 0) {
            logConstant += Math.log(cells[0]);
        } else if (scope.length == 1) {
            weights[2 * scope[0]] *= cells[0];
            weights[2 * scope[0] + 1] *= cells[1];
        } else {
            factors.add(new Factor(scope, cells));
        }
    }

    private void addOr(int i, Problem.Or or) {
        int parents = or.parents().length;
        switch (problem.roles()[i]) {
            case NO -> {
                logConstant += Math.log(or.noLeak());
                for (int p = 0; p < parents; p++) {
                    multiply(new int[] {variable[or.parents()[p]]}, 1, 1 - or.strengths()[p]);
                }
            }
            case FALLING -> {
                standIn[i] = add();
                multiply(new int[] {standIn[i]}, 1, or.noLeak());
                for (int p = 0; p < parents; p++) {
                    multiply(new int[] {standIn[i], variable[or.parents()[p]]}, 1, 1, 1, 1 - or.strengths()[p]);
                }
            }
            default -> addChain(i, or);
        }
    }

    private void addChain(int i, Problem.Or or) {
        int parents = or.parents().length;
        if (parents == 0) {
            conditional(problem.roles()[i], variable[i], new int[0], or.noLeak(), or.leak());
        }
        int before = NOWHERE;
        for (int p = 0; p < parents; p++) {
            int x = variable[or.parents()[p]];
            double s = or.strengths()[p];
            int[] given = p == 0 ? new int[] {x} : new int[] {before, x};
            double[] cells = p == 0
                    ? new double[] {or.noLeak(), or.leak(), or.noLeak() * (1 - s), Chances.either(or.leak(), s)}
                    : new double[] {1, 0, 1 - s, s, 0, 1, 0, 1};
            if (p == parents - 1) {
                conditional(problem.roles()[i], variable[i], given, cells);
            } else {
                before = add();
                String child = problem.kept().get(i).name();
                String parent = problem.kept().get(or.parents()[p]).name();
                named.put(Problem.chainName(child, parent, problem.index().keySet()), before);
                conditional(Role.FREE, before, given, cells);
            }
        }
    }

    /** Multiplies in P(child | given); {@code cells} hold no and yes for each row of the given variables. */
    private void conditional(Role role, int child, int[] given, double... cells) {
        if (role == Role.FREE) {
            int[] scope = Arrays.copyOf(given, given.length + 1);
            scope[given.length] = child;
            multiply(scope, cells);
        } else {
            double[] column = new double[cells.length / 2];
            for (int row = 0; row < column.length; row++) {
                column[row] = cells[2 * row + (role == Role.YES ? 1 : 0)];
            }
            multiply(given, column);
        }
    }

    private void addTable(int i, Table table) {
        int parents = table.parents().size();
        int[] open = new int[parents];
        int[] weight = new int[parents];
        int opened = 0;
        int base = 0;
        for (int p = 0; p < parents; p++) {
            int parent = problem.indexOf(table.parents().get(p));
            int bit = 1 << (parents - 1 - p);
            if (!problem.fixed(parent)) {
                weight[opened] = bit;
                open[opened++] = variable[parent];
            } else if (problem.roles()[parent] == Role.YES) {
                base += bit;
            }
        }
        double[] cells = new double[2 << opened];
        for (int row = 0; row < 1 << opened; row++) {
            int full = base;
            for (int p = 0; p < opened; p++) {
                if ((row >> (opened - 1 - p) & 1) == 1) {
                    full += weight[p];
                }
            }
            cells[2 * row] = 1 - table.yes(full);
            cells[2 * row + 1] = table.yes(full);
        }
        conditional(problem.roles()[i], variable[i], Arrays.copyOf(open, opened), cells);
    }
}
