package hingewise.rulebook.yaml;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Collects what is wrong while reading goes on. */
final class Problems {
    /** Beyond this many problems no near word is sought, so that a large broken file is refused quickly. */
    private static final int MOST_SUGGESTIONS = 300;

    private static final int MOST_NAMED = 12;

    private final List<Problem> found = new ArrayList<>();

    void add(Place at, String what, String advice) {
        found.add(new Problem(Severity.ERROR, at.file(), at.line(), what, advice));
    }

    /**
     * A word that is none of those known.
     *
     * @param noun what it should have been, such as "a component"
     */
    void unknown(Place at, String word, String noun, Collection<String> known) {
        add(at, Quote.of(word) + " is not " + noun, advice(word, known));
    }

    private String advice(String word, Collection<String> known) {
        Optional<String> near =
                found.size() < MOST_SUGGESTIONS ? Suggestion.nearest(word, known) : Optional.<String>empty();
        if (near.isPresent()) {
            return "Did you mean \"" + near.get() + "\"?";
        }
        if (known.isEmpty()) {
            return "None is defined: define it, or take it out.";
        }
        return known.size() <= MOST_NAMED
                ? "Write one of: " + String.join(", ", known) + "."
                : "Define it, or write one that is defined.";
    }

    List<Problem> sorted() {
        return found.stream()
                .distinct()
                .sorted(Comparator.comparing(Problem::file).thenComparingInt(Problem::line))
                .toList();
    }
}
