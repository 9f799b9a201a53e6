package hingewise.decision;

import java.util.Arrays;

/** Counts things by number. Of many worlds in few states each state is then weighed once, with how many there are. */
final class Tally {
    private int[] counts = new int[64];
    private int[] met = new int[64];
    private int size;

    /** Begins anew. */
    void clear() {
        for (int i = 0; i < size; i++) {
            counts[met[i]] = 0;
        }
        size = 0;
    }

    void add(int number) {
        if (number >= counts.length) {
            counts = Arrays.copyOf(counts, 2 * number);
            met = Arrays.copyOf(met, counts.length);
        }
        if (counts[number]++ == 0) {
            met[size++] = number;
        }
    }

    /** How many different numbers were counted. */
    int size() {
        return size;
    }

    /** One of them, in the order they were first met. */
    int number(int i) {
        return met[i];
    }

    /** How often that one was counted. */
    int times(int i) {
        return counts[met[i]];
    }
}
