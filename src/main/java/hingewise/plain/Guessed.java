package hingewise.plain;

import java.nio.charset.Charset;

/**
 * Text whose encoding was not told. What is not UTF-8 is taken for Windows-1252, the other encoding that listings and
 * spreadsheets come in; every sequence of bytes is something in it, so that the guess must be said.
 *
 * @param text without a byte order mark
 * @param guessed whether it was not UTF-8
 */
public record Guessed(String text, boolean guessed) {
    /** The name to say. */
    public static final String GUESS = "Windows-1252";

    public static Guessed decode(byte[] bytes) {
        Utf8.Decoded utf8 = Utf8.decode(bytes);
        return utf8.whole()
                ? new Guessed(utf8.text(), false)
                : new Guessed(new String(bytes, Charset.forName("windows-1252")), true);
    }
}
