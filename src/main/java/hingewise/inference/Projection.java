package hingewise.inference;

/**
 * Maps the cells of a table over many yes/no variables to the cells of a table over some of them. In both, the first
 * variable of the scope is the most significant bit of a cell's index.
 *
 * <p>The map is kept as two short arrays, one for the high and one for the low half of the bits, so that it costs little
 * memory even for the largest tables.
 */
final class Projection {
    private static final int LOW_BITS = 11;

    private final int[] high;
    private final int[] low;
    private final boolean same;

    private Projection(int[] high, int[] low, boolean same) {
        this.high = high;
        this.low = low;
        this.same = same;
    }

    /** Both scopes ascending; {@code part} is contained in {@code whole}. */
    static Projection of(int[] whole, int[] part) {
        int[] weight = new int[whole.length];
        int next = 0;
        for (int i = 0; i < whole.length; i++) {
            if (next < part.length && part[next] == whole[i]) {
                weight[i] = 1 << (part.length - 1 - next);
                next++;
            }
        }
        int lowBits = Math.min(LOW_BITS, whole.length);
        int split = whole.length - lowBits;
        return new Projection(sums(weight, 0, split), sums(weight, split, whole.length), whole.length == part.length);
    }

    private static int[] sums(int[] weight, int from, int to) {
        int[] sums = new int[1 << (to - from)];
        for (int index = 1; index < sums.length; index++) {
            int bit = Integer.numberOfTrailingZeros(index);
            sums[index] = sums[index & (index - 1)] + weight[to - 1 - bit];
        }
        return sums;
    }

    /** whole := part, spread over the cells that map to it. */
    void spread(double[] whole, double[] part) {
        if (same) {
            System.arraycopy(part, 0, whole, 0, high.length * low.length);
            return;
        }
        for (int h = 0, cell = 0; h < high.length; h++) {
            int base = high[h];
            for (int offset : low) {
                whole[cell++] = part[base + offset];
            }
        }
    }

    /** whole := whole · part. */
    void multiply(double[] whole, double[] part) {
        if (same) {
            for (int cell = 0; cell < high.length * low.length; cell++) {
                whole[cell] *= part[cell];
            }
            return;
        }
        for (int h = 0, cell = 0; h < high.length; h++) {
            int base = high[h];
            for (int offset : low) {
                whole[cell++] *= part[base + offset];
            }
        }
    }

    /** part := part + the sum of the cells of whole that map to it. */
    void sum(double[] whole, double[] part) {
        for (int h = 0, cell = 0; h < high.length; h++) {
            int base = high[h];
            for (int offset : low) {
                part[base + offset] += whole[cell++];
            }
        }
    }
}
