package hingewise.inference;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A compiled elimination: for each step the table it fills, where its inputs come from and where its result goes. It
 * holds no evidence and can be used any number of times.
 *
 * <p>Variables are renumbered by the step that sums them out, so step {@code v} sums out variable {@code v}; its table is
 * over {@code v} and the later variables {@code separator[v]}, {@code v} being the most significant bit.
 */
final class Plan {
    final Ordering ordering;
    final Model model;
    final int count;
    /** Step of each variable of the model. */
    final int[] step;

    final int[][] separator;
    /** The step whose table takes this step's result, or -1. */
    final int[] parent;

    final int[][] children;
    /** Places this step's result in the parent's table. */
    final Projection[] upwards;
    /** Product of the constant tables that this step is the first to touch, or empty, and its place in the table. */
    final double[][] constant;

    final Projection[] constantPlace;
    final double[] weights;
    final int largest;

    Plan(Ordering ordering) {
        this.ordering = ordering;
        model = ordering.model();
        count = model.count();
        largest = ordering.elimination().largest();
        step = new int[count];
        int[] order = ordering.elimination().order();
        for (int place = 0; place < count; place++) {
            step[order[place]] = place;
        }
        separator = new int[count][];
        parent = new int[count];
        upwards = new Projection[count];
        constant = new double[count][];
        constantPlace = new Projection[count];
        weights = permuted(model.weights());
        for (int v = 0; v < count; v++) {
            separator[v] = ascending(ordering.elimination().neighbours()[v]);
            parent[v] = separator[v].length == 0 ? -1 : separator[v][0];
        }
        children = children();
        for (int v = 0; v < count; v++) {
            if (parent[v] >= 0) {
                upwards[v] = Projection.of(clique(parent[v]), separator[v]);
            }
        }
        placeConstants();
    }

    private int[] ascending(int[] variables) {
        int[] steps = new int[variables.length];
        for (int i = 0; i < steps.length; i++) {
            steps[i] = step[variables[i]];
        }
        Arrays.sort(steps);
        return steps;
    }

    int[] clique(int v) {
        int[] clique = new int[separator[v].length + 1];
        clique[0] = v;
        System.arraycopy(separator[v], 0, clique, 1, separator[v].length);
        return clique;
    }

    private double[] permuted(double[] original) {
        double[] permuted = new double[original.length];
        for (int v = 0; v < count; v++) {
            permuted[2 * step[v]] = original[2 * v];
            permuted[2 * step[v] + 1] = original[2 * v + 1];
        }
        return permuted;
    }

    private int[][] children() {
        int[] sizes = new int[count];
        for (int v = 0; v < count; v++) {
            if (parent[v] >= 0) {
                sizes[parent[v]]++;
            }
        }
        int[][] lists = new int[count][];
        for (int v = 0; v < count; v++) {
            lists[v] = new int[sizes[v]];
        }
        for (int v = count - 1; v >= 0; v--) {
            if (parent[v] >= 0) {
                lists[parent[v]][--sizes[parent[v]]] = v;
            }
        }
        return lists;
    }

    private void placeConstants() {
        List<List<Model.Factor>> atStep = new ArrayList<>();
        for (int v = 0; v < count; v++) {
            atStep.add(new ArrayList<>());
        }
        for (Model.Factor factor : model.factors) {
            int first = count;
            for (int u : factor.scope()) {
                first = Math.min(first, step[u]);
            }
            atStep.get(first).add(factor);
        }
        for (int v = 0; v < count; v++) {
            List<Model.Factor> factors = atStep.get(v);
            if (!factors.isEmpty()) {
                int[] union = factors.stream()
                        .flatMapToInt(factor -> Arrays.stream(factor.scope()))
                        .map(u -> step[u])
                        .distinct()
                        .sorted()
                        .toArray();
                constant[v] = product(factors, union);
                constantPlace[v] = Projection.of(clique(v), union);
            } else {
                constant[v] = new double[0];
            }
        }
    }

    private double[] product(List<Model.Factor> factors, int[] union) {
        double[] cells = new double[1 << union.length];
        Arrays.fill(cells, 1);
        for (Model.Factor factor : factors) {
            int[] scope = factor.scope();
            int[] bit = new int[scope.length];
            for (int i = 0; i < scope.length; i++) {
                bit[i] = union.length - 1 - Arrays.binarySearch(union, step[scope[i]]);
            }
            for (int cell = 0; cell < cells.length; cell++) {
                int index = 0;
                for (int b : bit) {
                    index = 2 * index + (cell >> b & 1);
                }
                cells[cell] *= factor.cells()[index];
            }
        }
        return cells;
    }
}
