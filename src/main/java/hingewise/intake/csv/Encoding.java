package hingewise.intake.csv;

import hingewise.plain.Utf8;
import java.nio.charset.Charset;
import java.util.Optional;

/** How a sheet writes its characters as bytes. Both write what divides rows and cells in the same single bytes. */
public enum Encoding {
    UTF_8("UTF-8"),
    WINDOWS_1252("Windows-1252");

    private static final char NO_CHARACTER = '\uFFFD';

    private final String label;

    Encoding(String label) {
        this.label = label;
    }

    /** Its name as people write it. */
    public String label() {
        return label;
    }

    /** The text of these bytes; nothing if some of them mean no character. */
    Optional<String> decode(byte[] bytes) {
        if (this == UTF_8) {
            Utf8.Decoded decoded = Utf8.decode(bytes);
            return decoded.whole() ? Optional.of(decoded.text()) : Optional.empty();
        }
        String text = new String(bytes, Charset.forName(label));
        return text.indexOf(NO_CHARACTER) < 0 ? Optional.of(text) : Optional.empty();
    }
}
