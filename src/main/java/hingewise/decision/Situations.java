package hingewise.decision;

import java.util.Arrays;

/**
 * Numbers the situations that occur: a world and the state it is in by now. The first are the worlds as they were drawn,
 * by number.
 */
final class Situations {
    private final Numbering numbers = new Numbering();
    /** By situation, see {@link #state}. */
    private int[] states = new int[4096];

    /** @param drawn number of the state of each world */
    Situations(int[] drawn) {
        for (int w = 0; w < drawn.length; w++) {
            number(w, drawn[w]);
        }
    }

    int count() {
        return numbers.count();
    }

    int number(int world, int state) {
        int number = numbers.number((long) world << 32 | state);
        if (number >= states.length) {
            states = Arrays.copyOf(states, 2 * number);
        }
        states[number] = state;
        return number;
    }

    int world(int situation) {
        return (int) (numbers.key(situation) >>> 32);
    }

    /** The number of the state. */
    int state(int situation) {
        return states[situation];
    }
}
