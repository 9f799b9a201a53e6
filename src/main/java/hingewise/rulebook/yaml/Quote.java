package hingewise.rulebook.yaml;

/** Values of a file quoted in a message: short, on one line, without characters that steer a terminal. */
final class Quote {
    private static final int LONGEST = 60;

    private Quote() {}

    static String of(String value) {
        return '"' + plain(value) + '"';
    }

    static String plain(String value) {
        StringBuilder out = new StringBuilder();
        value.codePoints().limit(LONGEST).map(Quote::harmless).forEach(out::appendCodePoint);
        return value.codePointCount(0, value.length()) > LONGEST
                ? out.append('…').toString()
                : out.toString();
    }

    private static int harmless(int character) {
        if (Character.isWhitespace(character)) {
            return ' ';
        }
        return steers(character) ? '?' : character;
    }

    /** Whether a character is invisible and acts on the text around it: control, direction mark, lone surrogate. */
    static boolean steers(int character) {
        return switch (Character.getType(character)) {
            case Character.CONTROL, Character.FORMAT, Character.SURROGATE, Character.UNASSIGNED -> true;
            default -> false;
        };
    }
}
