package hingewise.inference;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/** Rankings of a problem's variables that are likely to make good chains. */
final class Rankings {
    private Rankings() {}

    /** Parents first, otherwise as the network lists them. */
    static int[] asDeclared(Problem problem) {
        return IntStream.range(0, problem.size()).toArray();
    }

    /**
     * The order in which min-fill sums variables out when every noisy-OR is a hub joined to each parent singly. That
     * graph forgets the chains, so it shows which causes belong together.
     */
    static int[] byElimination(Problem problem, int tie) {
        int size = problem.size();
        List<int[]> scopes = new ArrayList<>();
        for (int i = 0; i < size; i++) {
            if (problem.roles()[i] == Role.NO) {
                continue;
            }
            int[] parents = problem.openParents(i);
            if (problem.kept().get(i).mechanism() instanceof Table) {
                scopes.add(problem.fixed(i) ? parents : with(parents, i));
            } else if (parents.length > 0) {
                int hub = size + i;
                scopes.add(new int[] {hub, i});
                for (int parent : parents) {
                    scopes.add(new int[] {hub, parent});
                }
            }
        }
        int[] order = Elimination.minFill(2 * size, scopes, tie, Double.POSITIVE_INFINITY)
                .order();
        int[] rank = new int[size];
        for (int place = 0; place < order.length; place++) {
            if (order[place] < size) {
                rank[order[place]] = place;
            }
        }
        return rank;
    }

    /**
     * Places one variable after the other so that as few noisy-ORs as possible have some parents placed and others not.
     * Such a front is what an OR chain must remember.
     *
     * @param start rotates which of equally good variables is taken
     */
    static int[] byFrontier(Problem problem, int start) {
        int size = problem.size();
        List<List<Integer>> usedBy = new ArrayList<>();
        int[][] uses = new int[size][];
        int[] left = new int[size];
        int[] all = new int[size];
        for (int i = 0; i < size; i++) {
            usedBy.add(new ArrayList<>());
            uses[i] = new int[0];
        }
        for (int i = 0; i < size; i++) {
            if (problem.roles()[i] != Role.NO) {
                int[] parents = problem.openParents(i);
                uses[i] = parents;
                for (int parent : parents) {
                    usedBy.get(parent).add(i);
                }
                left[i] = parents.length;
                all[i] = parents.length;
            }
        }
        int[] rank = new int[size];
        double[] score = new double[size];
        for (int v = 0; v < size; v++) {
            score[v] = frontier(usedBy.get(v), left, all);
        }
        for (int place = 0; place < size; place++) {
            int best = start * 7 % size;
            for (int k = 1; k < size; k++) {
                int v = (k + start * 7) % size;
                if (score[v] < score[best]) {
                    best = v;
                }
            }
            rank[best] = place;
            for (int user : usedBy.get(best)) {
                left[user]--;
            }
            score[best] = Double.POSITIVE_INFINITY;
            for (int user : usedBy.get(best)) {
                for (int v : uses[user]) {
                    if (score[v] < Double.POSITIVE_INFINITY) {
                        score[v] = frontier(usedBy.get(v), left, all);
                    }
                }
            }
        }
        return rank;
    }

    /** Opened less closed, and among equals the variable that brings what is open nearer to its end. */
    private static double frontier(List<Integer> users, int[] left, int[] all) {
        double score = 0;
        for (int user : users) {
            if (left[user] == all[user]) {
                score += 1;
            }
            if (left[user] == 1) {
                score -= 1;
            }
            score -= .01 / left[user];
        }
        return score;
    }

    private static int[] with(int[] parents, int i) {
        int[] scope = Arrays.copyOf(parents, parents.length + 1);
        scope[parents.length] = i;
        return scope;
    }
}
