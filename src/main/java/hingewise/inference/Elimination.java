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
        private final int[] missing;
        private final int[] tieBreak;
        private final int[] open;
        private int left;

        Search(int count, List<int[]> scopes, int tie) {
            this.count = count;
            words = (count + 63) >>> 6;
            adjacent = new long[count * words];
            degree = new int[count];
            missing = new int[count];
            tieBreak = new int[count];
            open = new int[count];
            left = count;
            for (int[] scope : scopes) {
                for (int a : scope) {
                    for (int b : scope) {
                        connect(a, b);
                    }
                }
            }
            for (int v = 0; v < count; v++) {
                open[v] = v;
                tieBreak[v] = tie == 0 ? v : scramble(v * 31 + tie) & 0xFFFF;
                rate(v);
            }
        }

        private static int scramble(int x) {
            int y = (x ^ (x >>> 16)) * 0x45d9f3b;
            y = (y ^ (y >>> 16)) * 0x45d9f3b;
            return y ^ (y >>> 16);
        }

        private void connect(int a, int b) {
            if (a != b) {
                adjacent[a * words + (b >>> 6)] |= 1L << (b & 63);
            }
        }

        /** Counts the pairs of neighbours that are not joined to each other. */
        private void rate(int v) {
            int missing2 = 0;
            int neighbours = 0;
            for (int w = 0; w < words; w++) {
                for (long rest = adjacent[v * words + w]; rest != 0; rest &= rest - 1) {
                    missing2 += only(v, (w << 6) + Long.numberOfTrailingZeros(rest)) - 1;
                    neighbours++;
                }
            }
            degree[v] = neighbours;
            missing[v] = missing2 / 2;
        }

        /** How many neighbours of a are not neighbours of b; b itself counts if it is a neighbour of a. */
        private int only(int a, int b) {
            int count = 0;
            for (int w = 0; w < words; w++) {
                count += Long.bitCount(adjacent[a * words + w] & ~adjacent[b * words + w]);
            }
            return count;
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

        /**
         * Fewest new edges, then smallest degree, then the tie-break. A variable that needs no new edge is taken at once:
         * the order among such variables changes nothing.
         */
        private int next() {
            int best = 0;
            long least = Long.MAX_VALUE;
            for (int i = 0; i < left && least >= 1L << 32; i++) {
                int v = open[i];
                long score = ((long) missing[v] << 32) | ((long) degree[v] << 16) | tieBreak[v];
                if (score < least) {
                    best = i;
                    least = score;
                }
            }
            int found = open[best];
            open[best] = open[--left];
            return found;
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

        /** Joins two variables and keeps all counts right, without counting anew. */
        private void join(int a, int b) {
            if ((adjacent[a * words + (b >>> 6)] >>> (b & 63) & 1) != 0) {
                return;
            }
            for (int w = 0; w < words; w++) {
                long both = adjacent[a * words + w] & adjacent[b * words + w];
                for (; both != 0; both &= both - 1) {
                    missing[(w << 6) + Long.numberOfTrailingZeros(both)]--;
                }
            }
            missing[a] += only(a, b);
            missing[b] += only(b, a);
            connect(a, b);
            connect(b, a);
            degree[a]++;
            degree[b]++;
        }

        private void remove(int v, int[] around) {
            if (missing[v] > 0) {
                for (int i = 0; i < around.length; i++) {
                    for (int j = 0; j < i; j++) {
                        join(around[i], around[j]);
                    }
                }
            }
            for (int a : around) {
                missing[a] -= only(a, v) - 1;
                adjacent[a * words + (v >>> 6)] &= ~(1L << (v & 63));
                degree[a]--;
            }
        }
    }
}
