package hingewise.intake.store;

import hingewise.intake.Learned;
import hingewise.intake.ListingReader;
import hingewise.rulebook.RuleBook;
import hingewise.rulebook.yaml.RuleFiles;
import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** A small rule book of the test resources, with a language whose words stand in no phrase, only in examples. */
record Taught(Path folder) {
    private static final Path SMALL = Path.of("src/test/resources/hingewise/rulebook/yaml/small");

    private static final String LANGUAGE = """
            format: 1
            languages:
              en:
                label: English
                stemming: english
                common: [the, and]
                sets:
                  screen: [screen]
                topics: [screen]
                trust:
                  least: .5
                  always: -2
                  phrase: 0
                  part: 0
                  several-words: 0
                  scattered: 0
                  chance: 1
                  rival: 0
                  heard: 0
                  opposite: 0
                  silent: 0
                  heard-part: 0
                  heard-words: 0
                  sentence: 0
                  because: Invented for a test.
                  source: invented
                because: Invented for a test.
                source: invented
            """;

    static Taught in(Path folder) throws IOException {
        try (DirectoryStream<Path> files = Files.newDirectoryStream(SMALL, "*.yaml")) {
            for (Path file : files) {
                Files.copy(file, folder.resolve(file.getFileName()));
            }
        }
        Files.writeString(folder.resolve("words.yaml"), LANGUAGE);
        Files.createDirectory(folder.resolve("examples"));
        return new Taught(folder);
    }

    /** Gives it examples that say "dark" of a screen without an image, and this of a dent. */
    Taught saying(String dent) throws IOException {
        String text = "format: 1\nexamples:\n  own:\n    language: en\n    sentences:\n"
                + answer("no-image", "dark")
                + answer("dent", dent)
                + "    because: Invented for a test.\n    source: invented\n";
        Files.writeString(folder.resolve("examples").resolve("own.yaml"), text);
        return this;
    }

    private static String answer(String observation, String word) {
        String sentences = List.of("it is", "so", "quite", "sadly", "very", "all", "went", "looks").stream()
                .map(before -> "          " + before + " " + word + "\n")
                .collect(Collectors.joining());
        return "      " + observation + ":\n        yes: |\n" + sentences;
    }

    RuleFiles files() {
        return RuleFiles.in(folder);
    }

    RuleBook rules() {
        return files().read().ruleBook().orElseThrow();
    }

    String digest() {
        return files().digest().orElseThrow();
    }

    String lessons() {
        return Learned.digest(rules(), files().readWhole().examples());
    }

    Learned learned() {
        return Learned.from(rules(), files().readWhole().examples());
    }

    static Set<String> read(ListingReader reader, String text) {
        Set<String> read = new TreeSet<>();
        reader.read(text).suggestions().forEach(s -> read.add(s.observation() + (s.yes() ? "=yes" : "=no")));
        return read;
    }
}
