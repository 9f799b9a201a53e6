package hingewise.intake;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.BitSet;
import java.util.List;

/**
 * Packs names and numbers into bytes, for {@link Unpacker} to take out in the same order. Numbers are kept bit by bit;
 * of one that is nought nothing is kept but that it is.
 */
final class Packer {
    private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    private final DataOutputStream out = new DataOutputStream(bytes);

    void names(List<String> names) throws IOException {
        out.writeInt(names.size());
        for (String name : names) {
            byte[] letters = name.getBytes(StandardCharsets.UTF_8);
            out.writeInt(letters.length);
            out.write(letters);
        }
    }

    void numbers(float[] numbers) throws IOException {
        BitSet kept = new BitSet();
        for (int i = 0; i < numbers.length; i++) {
            kept.set(i, Float.floatToRawIntBits(numbers[i]) != 0);
        }
        byte[] which = kept.toByteArray();
        out.writeInt(numbers.length);
        out.writeInt(which.length);
        out.write(which);
        for (int i = kept.nextSetBit(0); i >= 0; i = kept.nextSetBit(i + 1)) {
            out.writeInt(Float.floatToRawIntBits(numbers[i]));
        }
    }

    byte[] packed() {
        return bytes.toByteArray();
    }
}
