package hingewise.rulebook;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/**
 * A pattern for what sellers write: every term must be met in one clause, in any order. Written as terms with blanks
 * between them; rules/README.md describes the terms.
 *
 * @param written as it stands in the rule book
 * @param turns whether it says the opposite when it is denied; if not, it then says nothing
 */
public record Phrase(String written, List<Term> terms, boolean turns) {
    /** What begins the name of a word set. */
    public static final char SET = '@';

    public Phrase {
        terms = List.copyOf(terms);
    }

    /** How a term bears on the clause. */
    public enum Mode {
        /** One of its alternatives must be met. */
        PRESENT,
        /** None of its alternatives may be met. */
        ABSENT,
        /** What the clause speaks of must be among its alternatives, or be left unsaid. */
        UNLESS_SAID
    }

    /**
     * One term.
     *
     * @param any its alternatives: names of word sets with {@link #SET} before them, or words joined by blanks
     */
    public record Term(Mode mode, List<String> any) {
        public Term {
            any = List.copyOf(any);
        }
    }

    /**
     * Reads a phrase.
     *
     * @throws IllegalArgumentException with a sentence that says what is wrong, without a closing full stop
     */
    public static Phrase parse(String written) {
        boolean turns = !written.startsWith("~");
        List<Term> terms = Arrays.stream(
                        written.substring(turns ? 0 : 1).strip().split(" +"))
                .map(Phrase::term)
                .toList();
        if (terms.stream().noneMatch(t -> t.mode() == Mode.PRESENT)) {
            throw new IllegalArgumentException("it has no term that must be met");
        }
        return new Phrase(written, terms, turns);
    }

    private static Term term(String written) {
        Mode mode = written.startsWith("!") ? Mode.ABSENT : written.endsWith("?") ? Mode.UNLESS_SAID : Mode.PRESENT;
        String bare = switch (mode) {
            case ABSENT -> written.substring(1);
            case UNLESS_SAID -> written.substring(0, written.length() - 1);
            case PRESENT -> written;
        };
        List<String> any = Arrays.stream(bare.split("\\|", -1))
                .map(a -> a.replace('+', ' ').strip())
                .toList();
        if (any.stream().anyMatch(a -> a.isEmpty() || a.equals("@"))) {
            throw new IllegalArgumentException("a term or an alternative of it is empty");
        }
        return new Term(mode, any);
    }

    /** The names of the word sets it uses, without {@link #SET}. */
    public Stream<String> sets() {
        return terms.stream()
                .flatMap(t -> t.any().stream())
                .filter(a -> a.charAt(0) == SET)
                .map(a -> a.substring(1));
    }
}
