package hingewise.plain;

/** Text from outside, made fit to be shown in one line of a message. */
public final class Quoted {
    private static final int LONGEST = 60;
    private static final String UNPRINTABLE = "\uFFFD";
    private static final int DELETE = 0x7F;
    private static final int NON_JOINER = 0x200C;
    private static final int JOINER = 0x200D;

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

    /**
     * The text with its line ends, each as one line feed, and with tabs; of other white space and of what could steer a
     * terminal the same becomes as in {@link #line}. The joiners that pictograms are made of stay.
     */
    public static String lines(String text) {
        if (text.chars().allMatch(c -> c >= ' ' && c < DELETE)) {
            return text;
        }
        StringBuilder lines = new StringBuilder(text.length());
        text.replace("\r\n", "\n").replace('\r', '\n').codePoints().forEach(c -> {
            if (c == '\n' || c == '\t' || c == NON_JOINER || c == JOINER) {
                lines.appendCodePoint(c);
            } else {
                lines.append(line(Character.toString(c)));
            }
        });
        return lines.toString();
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
