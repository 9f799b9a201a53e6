package hingewise.inference;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;

/**
 * An order of variables for tools that triangulate by maximum cardinality search (Tarjan and Yannakakis 1984, SIAM J.
 * Comput. 13:566-579), beginning with the first variable of the file and breaking ties in its order. Such a search is at
 * the mercy of that order: the same network may need tables a thousand times larger.
 */
final class FileOrder {
    private final List<String> names;
    private final BitSet[] neighbours;

    private FileOrder(Map<String, List<String>> families) {
        names = List.copyOf(families.keySet());
        neighbours = new BitSet[names.size()];
        for (int i = 0; i < neighbours.length; i++) {
            neighbours[i] = new BitSet();
        }
        families.forEach((name, parents) -> {
            List<String> family = new ArrayList<>(parents);
            family.add(name);
            for (String a : family) {
                family.stream()
                        .filter(b -> !b.equals(a))
                        .forEach(b -> neighbours[names.indexOf(a)].set(names.indexOf(b)));
            }
        });
    }

    /**
     * The reverse of a min-fill elimination order, with that variable in front which makes the tables smallest.
     *
     * @param families the parents of each variable
     */
    static List<String> of(Map<String, List<String>> families) {
        FileOrder search = new FileOrder(families);
        List<Integer> base = search.reverseMinFill();
        List<Integer> best = base;
        double least = Double.POSITIVE_INFINITY;
        for (Integer start : base) {
            List<Integer> order = new ArrayList<>(base);
            order.remove(start);
            order.add(0, start);
            double size = search.tables(search.numbered(order));
            if (size < least) {
                least = size;
                best = order;
            }
        }
        return best.stream().map(search.names::get).toList();
    }

    private BitSet[] copy() {
        BitSet[] copy = new BitSet[neighbours.length];
        for (int i = 0; i < copy.length; i++) {
            copy[i] = (BitSet) neighbours[i].clone();
        }
        return copy;
    }

    private static void eliminate(BitSet[] graph, int variable) {
        graph[variable].stream().forEach(a -> {
            graph[a].or(graph[variable]);
            graph[a].clear(a);
            graph[a].clear(variable);
        });
    }

    private List<Integer> reverseMinFill() {
        BitSet[] graph = copy();
        List<Integer> left = new ArrayList<>();
        for (int i = 0; i < graph.length; i++) {
            left.add(i);
        }
        List<Integer> reversed = new ArrayList<>();
        while (!left.isEmpty()) {
            Integer next = left.get(0);
            long fewest = Long.MAX_VALUE;
            for (Integer candidate : left) {
                long fill = fill(graph, candidate);
                if (fill < fewest) {
                    fewest = fill;
                    next = candidate;
                }
            }
            eliminate(graph, next);
            left.remove(next);
            reversed.add(0, next);
        }
        return reversed;
    }

    /** Twice the links that eliminating a variable adds, counting each variable's absent link to itself. */
    private static long fill(BitSet[] graph, int variable) {
        return graph[variable].stream()
                .mapToLong(a -> {
                    BitSet absent = (BitSet) graph[variable].clone();
                    absent.andNot(graph[a]);
                    return absent.cardinality();
                })
                .sum();
    }

    /** The variables as maximum cardinality search numbers them. */
    private List<Integer> numbered(List<Integer> order) {
        int[] cardinality = new int[names.size()];
        List<Integer> left = new ArrayList<>(order);
        List<Integer> numbered = new ArrayList<>();
        while (!left.isEmpty()) {
            Integer next = left.get(0);
            for (Integer candidate : left) {
                next = cardinality[candidate] > cardinality[next] ? candidate : next;
            }
            left.remove(next);
            numbered.add(next);
            neighbours[next].stream().forEach(n -> cardinality[n]++);
        }
        return numbered;
    }

    /** Cells of all tables when eliminating from the last number to the first. */
    private double tables(List<Integer> numbered) {
        BitSet[] graph = copy();
        double cells = 0;
        for (int i = numbered.size() - 1; i >= 0; i--) {
            cells += Math.scalb(1.0, graph[numbered.get(i)].cardinality() + 1);
            eliminate(graph, numbered.get(i));
        }
        return cells;
    }
}
