package hingewise.terminal;

import java.text.Normalizer;

/** Text for a terminal that knows ASCII only. */
final class Ascii {
    private Ascii() {}

    /** The text with typographic characters spelt out, accents dropped and everything else replaced by "?". */
    static String of(String text) {
        StringBuilder ascii = new StringBuilder(text.length());
        Normalizer.normalize(text, Normalizer.Form.NFKD)
                .codePoints()
                .filter(c -> Character.getType(c) != Character.NON_SPACING_MARK)
                .forEach(c -> ascii.append(c < 0x80 ? Character.toString(c) : nearest(c)));
        return ascii.toString();
    }

    private static String nearest(int c) {
        return switch (c) {
            case '–', '—', '─', '┄', '−' -> "-";
            case '‘', '’' -> "'";
            case '“', '”' -> "\"";
            case '·', '•' -> "*";
            case '×' -> "x";
            case '€' -> "EUR";
            case '→', '›' -> ">";
            case '│' -> "|";
            case '├' -> "+";
            case '└' -> "`";
            case 'ß' -> "ss";
            default -> "?";
        };
    }
}
