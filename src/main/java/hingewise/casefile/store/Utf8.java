package hingewise.casefile.store;

import hingewise.casefile.store.Json.Spot;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;

/** UTF-8 that complains where the usual conversion silently puts a replacement. */
final class Utf8 {
    private static final byte[] BYTE_ORDER_MARK = {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF};

    private Utf8() {}

    /** The text of these bytes, without a leading byte order mark. */
    static String text(Source source, byte[] bytes) {
        ByteBuffer in = ByteBuffer.wrap(bytes);
        if (bytes.length >= 3 && in.slice(0, 3).equals(ByteBuffer.wrap(BYTE_ORDER_MARK))) {
            in.position(3);
        }
        CharBuffer out = CharBuffer.allocate(bytes.length);
        CoderResult result = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT)
                .decode(in, out, true);
        String text = out.flip().toString();
        if (result.isError()) {
            int line = (int) text.chars().filter(c -> c == '\n').count() + 1;
            int column = text.length() - text.lastIndexOf('\n');
            throw source.problem(
                    new Spot(line, column), "a byte here is not UTF-8; save the file as UTF-8 or take an earlier copy");
        }
        return text;
    }

    /** Whether every character of the text is whole, so that it can be written and read back. */
    static boolean canHold(String text) {
        return StandardCharsets.UTF_8.newEncoder().canEncode(text);
    }
}
