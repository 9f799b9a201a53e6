package hingewise.inference;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The part of a network that matters for a question, with the role of each variable.
 *
 * @param kept the variables kept, parents first
 * @param index place of each in {@code kept}
 * @param roles role of each
 */
record Problem(List<Variable> kept, Map<String, Integer> index, Role[] roles) {

    /**
     * A noisy-OR with its certain parents worked into the leak; {@code parents} are places in {@code kept}. The chance
     * that the leak does not act is kept beside it, so that neither is got by subtraction.
     */
    record Or(double leak, double noLeak, int[] parents, double[] strengths) {}

    /** Drops every variable that is neither in {@code needed} nor an ancestor of one: summed out, each gives 1. */
    static List<Variable> relevant(Network network, Set<String> needed) {
        Set<String> keep = new HashSet<>();
        List<String> open = new ArrayList<>(needed);
        while (!open.isEmpty()) {
            String name = open.remove(open.size() - 1);
            if (keep.add(name)) {
                open.addAll(network.variable(name).mechanism().parents());
            }
        }
        List<Variable> kept = new ArrayList<>(keep.size());
        for (Variable variable : network.variables()) {
            if (keep.contains(variable.name())) {
                kept.add(variable);
            }
        }
        return List.copyOf(kept);
    }

    static Problem of(List<Variable> kept, Map<String, Role> roles) {
        Map<String, Integer> index = new HashMap<>();
        Role[] all = new Role[kept.size()];
        for (int i = 0; i < all.length; i++) {
            index.put(kept.get(i).name(), i);
            all[i] = roles.getOrDefault(kept.get(i).name(), Role.FREE);
        }
        return new Problem(kept, index, all);
    }

    int size() {
        return kept.size();
    }

    int indexOf(String name) {
        Integer found = index.get(name);
        if (found == null) {
            throw new IllegalArgumentException(
                    "'" + name + "' is not among the variables kept for this question; add it"
                            + " to the wanted or the observed variables");
        }
        return found;
    }

    boolean fixed(int i) {
        return roles[i] == Role.YES || roles[i] == Role.NO;
    }

    /** Places of the parents whose value is not certain. */
    int[] openParents(int i) {
        return kept.get(i).mechanism().parents().stream()
                .mapToInt(this::indexOf)
                .filter(parent -> !fixed(parent))
                .toArray();
    }

    /** The same problem with further variables certain. */
    Problem with(Map<Integer, Boolean> certain) {
        Role[] changed = roles.clone();
        certain.forEach((i, yes) -> changed[i] = yes ? Role.YES : Role.NO);
        return new Problem(kept, index, changed);
    }

    /** The noisy-OR with certain parents worked in and the others sorted by rank. */
    Or reduced(NoisyOr or, int[] rank) {
        double leak = or.leak();
        double noLeak = 1 - or.leak();
        List<Link> open = new ArrayList<>(or.links().size());
        for (Link link : or.links()) {
            int parent = indexOf(link.parent());
            if (!fixed(parent)) {
                open.add(link);
            } else if (roles[parent] == Role.YES) {
                leak = Chances.either(leak, link.strength());
                noLeak *= 1 - link.strength();
            }
        }
        if (open.size() > 1) {
            open.sort(byRank(rank));
        }
        int[] parents = new int[open.size()];
        double[] strengths = new double[open.size()];
        for (int p = 0; p < parents.length; p++) {
            parents[p] = indexOf(open.get(p).parent());
            strengths[p] = open.get(p).strength();
        }
        return new Or(leak, noLeak, parents, strengths);
    }

    /** All links as the chain takes them: certain parents first, then by rank. */
    List<Link> chained(NoisyOr or, int[] rank) {
        Comparator<Link> certainFirst = Comparator.comparing(link -> !fixed(indexOf(link.parent())));
        return or.links().stream()
                .sorted(certainFirst.thenComparing(byRank(rank)))
                .toList();
    }

    private Comparator<Link> byRank(int[] rank) {
        return Comparator.comparingInt(link -> rank[indexOf(link.parent())]);
    }

    static String chainName(String child, String parent, Set<String> taken) {
        String name = child + ".upTo." + parent;
        while (taken.contains(name)) {
            name += "_";
        }
        return name;
    }
}
