package hingewise.intake;

import hingewise.intake.store.Readers;
import hingewise.rulebook.RuleBook;
import hingewise.rulebook.yaml.RuleBookReader;
import hingewise.rulebook.yaml.RuleFiles;
import java.util.List;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * Prints how well listings are read: for the texts that phrases are written by with every miss, for the held-out ones
 * only the sums, so that nobody is led by them.
 */
final class ReadingAccuracy {
    private ReadingAccuracy() {}

    public static void main(String[] arguments) {
        RuleBook rules = RuleBookReader.readShipped().ruleBook().orElseThrow();
        ListingReader reader = Readers.of(RuleFiles.SHIPPED, rules, () -> {});
        Stream<String> names = Stream.of(
                        Stream.of(Labelled.WRITTEN, Labelled.FRESH),
                        Labelled.added().stream(),
                        Stream.of(Labelled.HELD_OUT))
                .flatMap(Function.identity());
        for (String name : names.toList()) {
            List<Labelled> texts = Labelled.read(name);
            Accuracy all = Accuracy.of(rules, reader, texts);
            if (!name.equals(Labelled.HELD_OUT)) {
                all.misses().forEach(System.out::println);
            }
            System.out.println(name + ": " + texts.size() + " texts; " + all.summary());
            for (String language : rules.languages().keySet()) {
                part(rules, reader, language, texts, t -> t.language().equals(language));
            }
            if (name.equals(Labelled.HELD_OUT)) {
                part(rules, reader, "by the first hand", texts, t -> t.id().startsWith(Labelled.FIRST_HAND));
                part(rules, reader, "by another hand", texts, t -> t.id().startsWith(Labelled.OTHER_HAND));
                part(rules, reader, "by further hands", texts, t -> t.id().startsWith(Labelled.FURTHER_HANDS));
            }
        }
    }

    private static void part(
            RuleBook rules, ListingReader reader, String label, List<Labelled> texts, Predicate<Labelled> which) {
        List<Labelled> some = texts.stream().filter(which).toList();
        if (!some.isEmpty()) {
            System.out.println("  " + label + ": " + some.size() + " texts; "
                    + Accuracy.of(rules, reader, some).summary());
        }
    }
}
