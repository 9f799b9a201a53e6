package hingewise.plain;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;

/** UTF-8 that tells where the usual conversion silently puts a replacement. */
public final class Utf8 {
    private static final char BYTE_ORDER_MARK = '\uFEFF';

    private Utf8() {}

    /**
     * Bytes as text.
     *
     * @param text without a leading byte order mark; up to the first byte that is not UTF-8
     * @param whole whether all bytes were UTF-8
     */
    public record Decoded(String text, boolean whole) {
        /** The line on which the text ends, from 1. */
        public int lastLine() {
            return (int) text.chars().filter(c -> c == '\n').count() + 1;
        }

        /** The column just after the text's last character, from 1. */
        public int lastColumn() {
            return text.length() - text.lastIndexOf('\n');
        }
    }

    public static Decoded decode(byte[] bytes) {
        CharBuffer out = CharBuffer.allocate(bytes.length);
        CoderResult result = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT)
                .decode(ByteBuffer.wrap(bytes), out, true);
        String text = out.flip().toString();
        boolean marked = !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK;
        return new Decoded(marked ? text.substring(1) : text, !result.isError());
    }

    /** Whether every character of the text is whole, so that it can be written and read back. */
    public static boolean canHold(String text) {
        return StandardCharsets.UTF_8.newEncoder().canEncode(text);
    }
}
