package hingewise.intake.store;

import hingewise.intake.Learned;
import hingewise.intake.ListingReader;
import hingewise.rulebook.RuleBook;
import hingewise.rulebook.yaml.Problem;
import hingewise.rulebook.yaml.RuleFiles;
import hingewise.rulebook.yaml.WholeReading;
import java.util.List;

/** Readers of texts. With the program's own rule book they start at once; with any other they learn from it first. */
public final class Readers {
    private Readers() {}

    /**
     * A reader of texts by a rule book.
     *
     * @param files where it was read from
     * @param learning is run before its examples are learned from, which takes half a minute or more
     * @throws ExamplesException if its examples must be learned from and have mistakes
     */
    public static ListingReader of(RuleFiles files, RuleBook rules, Runnable learning) {
        return of(Store.SHIPPED, files, rules, learning);
    }

    static ListingReader of(Store store, RuleFiles files, RuleBook rules, Runnable learning) {
        Learned learned = files.digest()
                .flatMap(d ->
                        store.find(rules.languages().keySet(), o -> o.rules().equals(d)))
                .orElseGet(() -> learned(store, files, rules, learning));
        return new ListingReader(rules, learned);
    }

    /** Another rule book whose words and examples are the same teaches the same. */
    private static Learned learned(Store store, RuleFiles files, RuleBook rules, Runnable learning) {
        WholeReading whole = files.readWhole();
        List<Problem> problems = whole.reading().problems();
        if (!problems.isEmpty()) {
            throw new ExamplesException(problems.stream().map(Problem::text).toList());
        }
        String lessons = Learned.digest(rules, whole.examples());
        return store.find(rules.languages().keySet(), o -> o.lessons().equals(lessons))
                .orElseGet(() -> {
                    learning.run();
                    return Learned.from(rules, whole.examples());
                });
    }
}
