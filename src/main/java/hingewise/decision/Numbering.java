package hingewise.decision;

import java.util.Arrays;

/** Numbers keys from 0 in the order they are first met. */
final class Numbering {
    private static final int FREE = -1;

    private long[] keys = new long[64];
    private int[] slots = slots(4 * keys.length);
    private int count;

    private static int[] slots(int size) {
        int[] slots = new int[size];
        Arrays.fill(slots, FREE);
        return slots;
    }

    int count() {
        return count;
    }

    long key(int number) {
        return keys[number];
    }

    /** The number of a key; that of a new one is the count so far. */
    int number(long key) {
        int slot = slot(key);
        if (slots[slot] != FREE) {
            return slots[slot];
        }
        if (count == keys.length) {
            grow();
            slot = slot(key);
        }
        slots[slot] = count;
        keys[count] = key;
        return count++;
    }

    private int slot(long key) {
        int mask = slots.length - 1;
        int slot = (int) (key * 0x9E3779B97F4A7C15L >>> 40) & mask;
        while (slots[slot] != FREE && keys[slots[slot]] != key) {
            slot = slot + 1 & mask;
        }
        return slot;
    }

    private void grow() {
        keys = Arrays.copyOf(keys, 2 * count);
        slots = slots(4 * keys.length);
        for (int i = 0; i < count; i++) {
            slots[slot(keys[i])] = i;
        }
    }
}
