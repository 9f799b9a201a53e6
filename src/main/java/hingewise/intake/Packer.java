package hingewise.intake;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Packs names and numbers into bytes, for {@link Unpacker} to take out in the same order. */
final class Packer {
    private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    private final DataOutputStream out = new DataOutputStream(bytes);

    void names(List<String> names) throws IOException {
        out.writeInt(names.size());
        for (String name : names) {
            bytes(name.getBytes(StandardCharsets.UTF_8));
        }
    }

    void numbers(float[] numbers) throws IOException {
        out.writeInt(numbers.length);
        for (float n : numbers) {
            out.writeInt(Float.floatToRawIntBits(n));
        }
    }

    void bytes(byte[] of) throws IOException {
        out.writeInt(of.length);
        out.write(of);
    }

    byte[] packed() {
        return bytes.toByteArray();
    }
}
