package hingewise.decision;

import java.util.Arrays;

/** Numbers the states that occur and keeps what each decision costs in them. */
final class States {
    private final Problem problem;
    private final int endings;
    private long[] states = new long[256];
    private double[][] losses = new double[256][];
    private int[] slots = new int[1024];
    private int count;

    States(Problem problem) {
        this.problem = problem;
        this.endings = problem.endings().size();
        Arrays.fill(slots, -1);
    }

    int count() {
        return count;
    }

    long state(int number) {
        return states[number];
    }

    /** What each decision costs in a state, in the order of the endings; not to be changed. */
    double[] losses(int number) {
        return losses[number];
    }

    /** The number of a state. */
    int number(long state) {
        int slot = slot(state);
        if (slots[slot] >= 0) {
            return slots[slot];
        }
        if (count == states.length) {
            grow();
            slot = slot(state);
        }
        slots[slot] = count;
        states[count] = state;
        double[] row = new double[endings];
        for (int e = 0; e < endings; e++) {
            row[e] = problem.loss(problem.endings().get(e), state);
        }
        losses[count] = row;
        return count++;
    }

    private int slot(long state) {
        int mask = slots.length - 1;
        long mixed = state * 0x9E3779B97F4A7C15L;
        int slot = (int) (mixed >>> 40) & mask;
        while (slots[slot] >= 0 && states[slots[slot]] != state) {
            slot = slot + 1 & mask;
        }
        return slot;
    }

    private void grow() {
        states = Arrays.copyOf(states, 2 * count);
        losses = Arrays.copyOf(losses, 2 * count);
        slots = new int[8 * count];
        Arrays.fill(slots, -1);
        for (int i = 0; i < count; i++) {
            slots[slot(states[i])] = i;
        }
    }
}
