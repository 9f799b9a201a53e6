package hingewise.intake;

import hingewise.rulebook.RuleBook;
import hingewise.rulebook.yaml.RuleBookReader;
import java.util.List;

/**
 * Prints how well listings are read: for the texts that phrases are written by with every miss, for the held-out ones only the sums, so that
 * nobody is led by them.
 */
final class ReadingAccuracy {
    private ReadingAccuracy() {}

    public static void main(String[] arguments) {
        RuleBook rules = RuleBookReader.readShipped().ruleBook().orElseThrow();
        ListingReader reader = new ListingReader(rules);
        for (String name : List.of(Labelled.WRITTEN, Labelled.FRESH, Labelled.HELD_OUT)) {
            List<Labelled> texts = Labelled.read(name);
            Accuracy all = Accuracy.of(rules, reader, texts);
            if (!name.equals(Labelled.HELD_OUT)) {
                all.misses().forEach(System.out::println);
            }
            System.out.println(name + ": " + texts.size() + " texts; " + all.summary());
            for (String language : rules.languages().keySet()) {
                List<Labelled> some = texts.stream()
                        .filter(t -> t.language().equals(language))
                        .toList();
                System.out.println("  " + language + ": " + some.size() + " texts; "
                        + Accuracy.of(rules, reader, some).summary());
            }
        }
    }
}
