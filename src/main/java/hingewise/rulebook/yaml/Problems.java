package hingewise.rulebook.yaml;

import hingewise.plain.Quoted;
import hingewise.rulebook.NearestId;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;

/** Collects what is wrong while reading goes on. */
public final class Problems {
    /** So many words may be compared in search of near ones; then a large broken file is still refused quickly. */
    private static final int MOST_COMPARISONS = 1_000_000;

    private final List<Problem> found = new ArrayList<>();
    private int comparisons;

    public void add(Place at, String what, String advice) {
        found.add(new Problem(Severity.ERROR, at.file(), at.line(), what, advice));
    }

    /**
     * A word that is none of those known.
     *
     * @param noun what it should have been, such as "a component"
     */
    public void unknown(Place at, String word, String noun, Collection<String> known) {
        add(at, Quoted.of(word) + " is not " + noun, advice(word, known));
    }

    private String advice(String word, Collection<String> known) {
        if (known.isEmpty()) {
            return "None is defined: define it, or take it out.";
        }
        comparisons = Math.min(MOST_COMPARISONS, comparisons + known.size());
        return comparisons < MOST_COMPARISONS
                ? NearestId.advice(word, known)
                : "Define it, or write one that is defined.";
    }

    public boolean isEmpty() {
        return found.isEmpty();
    }

    public List<Problem> sorted() {
        return found.stream()
                .distinct()
                .sorted(Comparator.comparing(Problem::file).thenComparingInt(Problem::line))
                .toList();
    }
}
