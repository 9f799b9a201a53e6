package hingewise.inference;

import java.util.List;

/**
 * An order in which to sum out the variables, found by the min-fill rule: next goes the variable whose neighbours need
 * the fewest new edges (Kjærulff 1990, Triangulation of graphs: algorithms giving small total state space).
 *
 * @param order the variables, first to go first
 * @param neighbours for each place of the order, the variables the one at that place is then coupled with
 * @param cost table cells over all cliques
 * @param largest variables in the largest clique
 */
record Elimination(int[] order, int[][] neighbours, double cost, int largest) {
    /** What an abandoned search reports: worse than anything. */
    private static final Elimination ABANDONED =
            new Elimination(new int[0], new int[0][], Double.POSITIVE_INFINITY, Integer.MAX_VALUE);

    /**
     * Min-fill on the graph in which the variables of each scope are coupled.
     *
     * @param tie decides between equally good variables; another number gives another order
     * @param limit the search is given up when the cost exceeds this
     */
    static Elimination minFill(int count, List<int[]> scopes, int tie, double limit) {
        return new Search(count, scopes, tie).run(limit);
    }

    private static final class Search {
        private final int count;
        private final int words;
        private final long[] adjacent;
        private final int[] degree;
        private final long[] score;
        private final int[] tieBreak;
        private final boolean[] gone;

        Search(int count, List<int[]> scopes, int tie) {
            this.count = count;
            words = (count + 63) >>> 6;
            adjacent = new long[count * words];
            degree = new int[count];
            score = new long[count];
            tieBreak = new int[count];
            gone = new boolean[count];
            for (int[] scope : scopes) {
                for (int a : scope) {
                    for (int b : scope) {
                        connect(a, b);
                    }
                }
            }
            for (int v = 0; v < count; v++) {
                tieBreak[v] = tie == 0 ? v : scramble(v * 31 + tie) & 0xFFFF;
                rate(v);
            }
        }

        private static int scramble(int x) {
            int y = (x ^ (x >>> 16)) * 0x45d9f3b;
            y = (y ^ (y >>> 16)) * 0x45d9f3b;
            return y ^ (y >>> 16);
        }

        private boolean connect(int a, int b) {
            int word = a * words + (b >>> 6);
            long bit = 1L << (b & 63);
            if (a == b || (adjacent[word] & bit) != 0) {
                return false;
            }
            adjacent[word] |= bit;
            degree[a]++;
            return true;
        }

        /** Score: new edges, then degree, then the tie-break. */
        private void rate(int v) {
            int missing = 0;
            int row = v * words;
            for (int w = 0; w < words; w++) {
                long rest = adjacent[row + w];
                while (rest != 0) {
                    int u = (w << 6) + Long.numberOfTrailingZeros(rest);
                    rest &= rest - 1;
                    int other = u * words;
                    for (int x = 0; x < words; x++) {
                        missing += Long.bitCount(adjacent[row + x] & ~adjacent[other + x]);
                    }
                    missing--;
                }
            }
            score[v] = ((long) (missing / 2) << 32) | ((long) degree[v] << 16) | tieBreak[v];
        }

        Elimination run(double limit) {
            int[] order = new int[count];
            int[][] neighbours = new int[count][];
            double cost = 0;
            int largest = 0;
            for (int place = 0; place < count; place++) {
                int v = next();
                int[] around = neighboursOf(v);
                order[place] = v;
                neighbours[place] = around;
                largest = Math.max(largest, around.length + 1);
                cost += Math.scalb(1.0, around.length + 1);
                if (cost > limit) {
                    return ABANDONED;
                }
                remove(v, around);
            }
            return new Elimination(order, neighbours, cost, largest);
        }

        private int next() {
            int best = -1;
            for (int v = 0; v < count; v++) {
                if (!gone[v] && (best < 0 || score[v] < score[best])) {
                    best = v;
                }
            }
            return best;
        }

        private int[] neighboursOf(int v) {
            int[] found = new int[degree[v]];
            int size = 0;
            for (int w = 0; w < words; w++) {
                long rest = adjacent[v * words + w];
                while (rest != 0) {
                    found[size++] = (w << 6) + Long.numberOfTrailingZeros(rest);
                    rest &= rest - 1;
                }
            }
            return found;
        }

        private void remove(int v, int[] around) {
            gone[v] = true;
            boolean simplicial = score[v] >>> 32 == 0;
            long[] touched = new long[words];
            for (int a : around) {
                adjacent[a * words + (v >>> 6)] &= ~(1L << (v & 63));
                degree[a]--;
                touched[a >>> 6] |= 1L << (a & 63);
            }
            if (!simplicial) {
                for (int a : around) {
                    for (int b : around) {
                        connect(a, b);
                    }
                }
                // A new edge among the neighbours changes the score of everything that sees both of its ends.
                for (int a : around) {
                    for (int w = 0; w < words; w++) {
                        touched[w] |= adjacent[a * words + w];
                    }
                }
            }
            for (int w = 0; w < words; w++) {
                for (long rest = touched[w]; rest != 0; rest &= rest - 1) {
                    rate((w << 6) + Long.numberOfTrailingZeros(rest));
                }
            }
        }
    }
}
