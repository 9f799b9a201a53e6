package hingewise.terminal;

import hingewise.plain.Quoted;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Text laid out in 80 columns. Everything put on a page is made harmless first: nothing in it can steer a terminal, so
 * that the only escape sequences are the page's own colours.
 */
final class Page {
    static final int WIDTH = 80;

    private final Look look;
    private final StringBuilder text = new StringBuilder();

    Page(Look look) {
        this.look = look;
    }

    /** A heading with a line under it, set off from what is above. */
    Page heading(String words) {
        String shown = shown(words);
        return blank().put(Optional.of(Tint.HEADING), shown).put(Optional.of(Tint.FAINT), rule(length(shown)));
    }

    /** An empty line, unless the page is empty or ends with one. */
    Page blank() {
        if (!text.isEmpty() && !text.toString().endsWith("\n\n")) {
            text.append('\n');
        }
        return this;
    }

    Page line(String words) {
        return hanging(0, "", words);
    }

    /** One line however long, for what other programs pick lines from. */
    Page unwrapped(String words) {
        return put(Optional.empty(), shown(words));
    }

    Page faint(int indent, String words) {
        return hanging(indent, "", words, Optional.of(Tint.FAINT));
    }

    /** A lead at an indent, then words wrapped so that every line begins below the first word. */
    Page hanging(int indent, String lead, String words) {
        return hanging(indent, lead, words, Optional.empty());
    }

    /** The same, tinted. */
    Page hanging(int indent, String lead, String words, Optional<Tint> tint) {
        String margin = " ".repeat(indent);
        String shownLead = shown(lead);
        String first = margin + shownLead;
        String rest = margin + " ".repeat(length(shownLead));
        for (String line : wrap(shown(words), WIDTH - length(first))) {
            put(tint, first + line);
            first = rest;
        }
        return this;
    }

    /** Lines that nobody can take for ordinary ones: each begins with exclamation marks, a row of them at either end. */
    Page alarm(List<String> paragraphs) {
        Optional<Tint> stop = Optional.of(Tint.STOP);
        blank().put(stop, "!".repeat(WIDTH));
        for (String paragraph : paragraphs) {
            hanging(0, "!! ", "", stop);
            for (String line : wrap(shown(paragraph), WIDTH - 3)) {
                put(stop, "!! " + line);
            }
        }
        return hanging(0, "!! ", "", stop).put(stop, "!".repeat(WIDTH));
    }

    @Override
    public String toString() {
        return text.toString();
    }

    private String rule(int length) {
        return (look.unicode() ? "─" : "-").repeat(length);
    }

    private String shown(String words) {
        return look.shown(Quoted.line(words));
    }

    private Page put(Optional<Tint> tint, String line) {
        String bare = line.stripTrailing();
        text.append(look.colour() ? tint.map(t -> t.paint(bare)).orElse(bare) : bare)
                .append('\n');
        return this;
    }

    private static int length(String line) {
        return line.codePointCount(0, line.length());
    }

    /** Breaks at blanks; a word longer than the room is cut. Blanks beside a per cent sign do not break. */
    private static List<String> wrap(String words, int room) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String whole : words.replace(" %", "\u00A0%").strip().split(" +")) {
            String word = whole;
            while (length(word) > room) {
                if (line.length() > 0) {
                    lines.add(line.toString());
                    line.setLength(0);
                }
                int cut = word.offsetByCodePoints(0, room);
                lines.add(word.substring(0, cut));
                word = word.substring(cut);
            }
            if (line.length() > 0 && length(line.toString()) + 1 + length(word) > room) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.length() > 0 ? " " : "").append(word);
        }
        lines.add(line.toString());
        return lines.stream().map(l -> l.replace('\u00A0', ' ')).toList();
    }
}
