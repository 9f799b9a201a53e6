package hingewise.intake;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
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
        for (int i = 0; i < numbers.length; i++) {
            numbers[i] = Float.intBitsToFloat(in.getInt());
        }
        return numbers;
    }

    /** @throws RuntimeException if there are none here */
    byte[] bytes() {
        byte[] bytes = new byte[in.getInt()];
        in.get(bytes);
        return bytes;
    }
}
