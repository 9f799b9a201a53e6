package hingewise.rulebook.yaml;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.IntStream;

/**
 * A file in YAML, as text.
 *
 * @param name as the user names it
 */
public record Source(String name, String text) {
    /** Largest file that is read. A rule book is written by hand: hundreds of rules make a tenth of this. */
    static final int LARGEST_BYTES = 4 * 1024 * 1024;

    /** Longest line, in characters. The scanner below takes time by the square of a line's length. */
    static final int LONGEST_LINE = 10_000;

    /** Reads the file, without holding more than {@link #LARGEST_BYTES} of it. */
    public static Source read(String name, Path path) throws Refusal {
        Place file = new Place(name, 0);
        try {
            if (!Files.isRegularFile(path)) {
                throw new Refusal(
                        file,
                        "this is not a file",
                        "Name an ordinary file, or move this out of the rule book's folder.");
            }
            if (Files.size(path) > LARGEST_BYTES) {
                throw tooLarge(file);
            }
            try (InputStream in = Files.newInputStream(path)) {
                return read(name, in);
            }
        } catch (IOException e) {
            throw new Refusal(file, "the file cannot be read", "See that it is there and may be read by you.");
        }
    }

    /** Reads what is still to come, without holding more than {@link #LARGEST_BYTES} of it. */
    public static Source read(String name, InputStream in) throws IOException, Refusal {
        byte[] bytes = in.readNBytes(LARGEST_BYTES + 1);
        if (bytes.length > LARGEST_BYTES) {
            throw tooLarge(new Place(name, 0));
        }
        return new Source(name, checked(name, decoded(name, bytes)));
    }

    int lines() {
        return lineAt(text, text.length());
    }

    /** The position at which each line begins. */
    int[] starts() {
        return IntStream.concat(
                        IntStream.of(0),
                        IntStream.range(0, text.length())
                                .filter(i -> text.charAt(i) == '\n')
                                .map(i -> i + 1))
                .toArray();
    }

    private static Refusal tooLarge(Place file) {
        return new Refusal(file, "the file is larger than 4 MiB", "Divide it, or take out what does not belong in it.");
    }

    private static String decoded(String name, byte[] bytes) throws Refusal {
        CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
        CharBuffer out = CharBuffer.allocate(bytes.length);
        CoderResult result = decoder.decode(ByteBuffer.wrap(bytes), out, true);
        String text = out.flip().toString();
        if (result.isError()) {
            int line = lineAt(text, text.length());
            throw new Refusal(new Place(name, line), "this is not UTF-8 text", "Save the file as UTF-8.");
        }
        return text.startsWith("\uFEFF") ? text.substring(1) : text;
    }

    private static String checked(String name, String text) throws Refusal {
        int lineStart = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '\n') {
                lineStart = i + 1;
            } else if (i - lineStart >= LONGEST_LINE) {
                throw new Refusal(
                        new Place(name, lineAt(text, i)),
                        "this line has more than " + LONGEST_LINE + " characters",
                        "Break it into several lines.");
            }
            if (c == '\t') {
                throw new Refusal(
                        new Place(name, lineAt(text, i)), "there is a tab in this line", "Write spaces instead.");
            }
            boolean lineEnd = c == '\n' || (c == '\r' && i + 1 < text.length() && text.charAt(i + 1) == '\n');
            if (!lineEnd && breaksText(c)) {
                throw new Refusal(
                        new Place(name, lineAt(text, i)),
                        String.format("there is a character U+%04X in this line, which cannot be seen", (int) c),
                        "Delete it.");
            }
        }
        return text;
    }

    private static boolean breaksText(char c) {
        return Character.isISOControl(c) || c == '\u2028' || c == '\u2029' || c == '\uFEFF' || c >= '\uFFFE';
    }

    private static int lineAt(String text, int position) {
        return 1
                + (int) text.substring(0, position)
                        .chars()
                        .filter(c -> c == '\n')
                        .count();
    }
}
