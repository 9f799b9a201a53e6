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
     * @throws ExamplesException if its examples must be learned from and have mistakes
     */
    public static ListingReader of(RuleFiles files, RuleBook rules) {
        return of(Store.SHIPPED, files, rules);
    }

    static ListingReader of(Store store, RuleFiles files, RuleBook rules) {
        Learned learned = files.digest()
                .flatMap(d -> store.find(rules.languages().keySet(), d))
                .orElseGet(() -> learned(files, rules));
        return new ListingReader(rules, learned);
    }

    private static Learned learned(RuleFiles files, RuleBook rules) {
        WholeReading whole = files.readWhole();
        List<Problem> problems = whole.reading().problems();
        if (!problems.isEmpty()) {
            throw new ExamplesException(problems.stream().map(Problem::text).toList());
        }
        return Learned.from(rules, whole.examples());
    }
}
