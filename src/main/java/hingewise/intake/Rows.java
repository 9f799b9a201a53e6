package hingewise.intake;

import java.io.IOException;

/**
 * Rows of numbers, each rounded to 255 steps between the largest of its row and the negative of it. So they are packed
 * into a quarter of the room, and what is unpacked is the same as what was learned.
 *
 * @param numbers by row
 * @param steps what one step of each row is
 */
record Rows(float[][] numbers, float[] steps) {
    static Rows rounded(float[][] numbers) {
        byte[][] counts = new byte[numbers.length][];
        float[] steps = new float[numbers.length];
        for (int r = 0; r < numbers.length; r++) {
            float largest = 0;
            for (float n : numbers[r]) {
                largest = Math.max(largest, Math.abs(n));
            }
            steps[r] = largest == 0 ? 1 : largest / Byte.MAX_VALUE;
            counts[r] = new byte[numbers[r].length];
            for (int i = 0; i < numbers[r].length; i++) {
                counts[r][i] = count(numbers[r][i], steps[r]);
            }
        }
        return of(counts, steps);
    }

    static Rows unpacked(Unpacker in) {
        float[] steps = in.numbers();
        byte[][] counts = new byte[steps.length][];
        for (int r = 0; r < counts.length; r++) {
            counts[r] = in.bytes();
        }
        return of(counts, steps);
    }

    private static Rows of(byte[][] counts, float[] steps) {
        float[][] numbers = new float[counts.length][];
        for (int r = 0; r < numbers.length; r++) {
            numbers[r] = new float[counts[r].length];
            for (int i = 0; i < numbers[r].length; i++) {
                numbers[r][i] = counts[r][i] * steps[r];
            }
        }
        return new Rows(numbers, steps);
    }

    private static byte count(float number, float step) {
        return (byte) Math.round(number / step);
    }

    void pack(Packer out) throws IOException {
        out.numbers(steps);
        for (int r = 0; r < numbers.length; r++) {
            byte[] counts = new byte[numbers[r].length];
            for (int i = 0; i < counts.length; i++) {
                counts[i] = count(numbers[r][i], steps[r]);
            }
            out.bytes(counts);
        }
    }

    /** Adds a row so many times. */
    void add(int row, float times, float[] to) {
        float[] of = numbers[row];
        for (int i = 0; i < to.length; i++) {
            to[i] += times * of[i];
        }
    }
}
