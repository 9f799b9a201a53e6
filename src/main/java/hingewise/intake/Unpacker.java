package hingewise.intake;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/** Takes out what a {@link Packer} has packed, in the same order. */
final class Unpacker {
    private final ByteBuffer in;

    Unpacker(byte[] packed) {
        this.in = ByteBuffer.wrap(packed);
    }

    /** @throws RuntimeException if there are none here */
    List<String> names() {
        List<String> names = new ArrayList<>();
        for (int left = in.getInt(); left > 0; left--) {
            names.add(new String(bytes(), StandardCharsets.UTF_8));
        }
        return names;
    }

    /** @throws RuntimeException if there are none here */
    float[] numbers() {
        float[] numbers = new float[in.getInt()];
        BitSet kept = BitSet.valueOf(bytes());
        for (int i = kept.nextSetBit(0); i >= 0; i = kept.nextSetBit(i + 1)) {
            numbers[i] = Float.intBitsToFloat(in.getInt());
        }
        return numbers;
    }

    private byte[] bytes() {
        byte[] bytes = new byte[in.getInt()];
        in.get(bytes);
        return bytes;
    }
}
