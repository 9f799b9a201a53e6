package hingewise.plain;

/** Text from outside, made fit to be shown in one line of a message. */
public final class Quoted {
    private static final int LONGEST = 60;
    private static final String UNPRINTABLE = "\uFFFD";

    private Quoted() {}

    /** The text in double quotes, cut when long, nothing in it that could steer a terminal. */
    public static String of(String text) {
        return "\"" + cut(line(text)) + "\"";
    }

    /**
     * The text as one line: white space becomes a blank; control, formatting (such as reversal of writing direction)
     * and unpaired surrogate characters become a replacement mark.
     */
    public static String line(String text) {
        StringBuilder line = new StringBuilder(text.length());
        text.codePoints().forEach(c -> {
            if (Character.isWhitespace(c)) {
                line.append(' ');
            } else if (steers(c)) {
                line.append(UNPRINTABLE);
            } else {
                line.appendCodePoint(c);
            }
        });
        return line.toString();
    }

    private static boolean steers(int c) {
        return switch (Character.getType(c)) {
            case Character.CONTROL,
                    Character.FORMAT,
                    Character.SURROGATE,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR -> true;
            default -> false;
        };
    }

    private static String cut(String line) {
        return line.codePointCount(0, line.length()) <= LONGEST
                ? line
                : line.substring(0, line.offsetByCodePoints(0, LONGEST)) + "…";
    }
}
