package hingewise.intake;

import hingewise.intake.store.Readers;
import hingewise.rulebook.RuleBook;
import hingewise.rulebook.yaml.RuleBookReader;
import hingewise.rulebook.yaml.RuleFiles;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Prints the examples of the rule book: from the labelled texts that phrases may be written by, never from the held-out
 * ones, the sentence that each label rests on. That is the one a right suggestion quotes; where there is none, the one
 * most like the examples that the rule book has already.
 */
final class ExamplesGatherer {
    private ExamplesGatherer() {}

    /** @param arguments a language, and the files to leave out, so that the examples can be tested by those */
    public static void main(String[] arguments) {
        RuleBook rules = RuleBookReader.readShipped().ruleBook().orElseThrow();
        ListingReader reader = Readers.of(RuleFiles.SHIPPED, rules, () -> {});
        String language = arguments[0];
        Set<String> left = Stream.of(arguments).skip(1).collect(Collectors.toSet());
        Map<String, Map<Boolean, Set<String>>> examples = new TreeMap<>();
        Set<String> silent = new TreeSet<>();
        Stream.concat(Stream.of(Labelled.WRITTEN, Labelled.FRESH), Labelled.added().stream())
                .filter(n -> !left.contains(n))
                .flatMap(n -> Labelled.read(n).stream())
                .filter(t -> t.language().equals(language))
                .forEach(t -> gather(reader, t, examples, silent));
        System.out.println("    sentences:");
        examples.forEach((observation, answers) -> {
            System.out.println("      " + observation + ":");
            print("        ", "yes", answers.getOrDefault(true, Set.of()));
            print("        ", "no", answers.getOrDefault(false, Set.of()));
        });
        print("    ", "silent", silent);
    }

    private static void print(String indent, String key, Set<String> sentences) {
        if (!sentences.isEmpty()) {
            System.out.println(indent + key + ": |");
            sentences.forEach(s -> System.out.println(indent + "  " + s.strip()));
        }
    }

    private static void gather(
            ListingReader reader, Labelled text, Map<String, Map<Boolean, Set<String>>> examples, Set<String> silent) {
        List<ListingReader.Stretch> sentences = reader.sentences(text.language(), text.text());
        Set<ListingReader.Stretch> speaking = new HashSet<>();
        Map<String, Integer> starts = new TreeMap<>();
        reader.readIn(text.language(), text.text()).suggestions().stream()
                .filter(s -> text.labels().contains(s.observation() + (s.yes() ? "=yes" : "=no")))
                .forEach(s -> starts.putIfAbsent(s.observation(), s.start()));
        for (String label : text.labels()) {
            String observation = label.substring(0, label.indexOf('='));
            Integer start = starts.get(observation);
            ListingReader.Stretch stretch = sentences.stream()
                    .filter(s -> start != null && start < s.end())
                    .findFirst()
                    .or(() -> reader.likest(text.language(), sentences, observation))
                    .orElseThrow();
            speaking.add(stretch);
            examples.computeIfAbsent(observation, o -> new TreeMap<>())
                    .computeIfAbsent(label.endsWith("=yes"), y -> new TreeSet<>())
                    .add(words(text, stretch));
        }
        sentences.stream().filter(s -> !speaking.contains(s)).forEach(s -> silent.add(words(text, s)));
    }

    private static String words(Labelled text, ListingReader.Stretch stretch) {
        return text.text().substring(stretch.start(), stretch.end()).replaceAll("\\s+", " ");
    }
}
