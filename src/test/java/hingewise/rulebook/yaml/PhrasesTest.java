package hingewise.rulebook.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import hingewise.rulebook.Phrase;
import hingewise.rulebook.Phrases;
import hingewise.rulebook.Trust;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Languages, hints and phrases in a rule book; the format is that of rules/README.md. */
class PhrasesTest {
    private static final String WORDS = """
            format: 1
            languages:
              en:
                label: English
                stemming: english
                common: [the, and]
                sets:
                  screen: [screen]
                  inner: [inner screen, "@screen"]
                topics: [screen, inner]
                because: Invented for a test.
                source: invented
            hints:
              alive:
                label: it lives
                phrases: {en: {yes: [it rings]}}
                because: Invented for a test.
                source: invented
            """;

    @TempDir
    Path folder;

    private Reading read(String words, String phrases) throws IOException {
        SmallBook book = SmallBook.whole().with("words.yaml", words);
        return book.with(
                        "questions.yaml",
                        book.text("questions.yaml").replaceFirst("(\n    leak:)", "\n    phrases: " + phrases + "$1"))
                .readIn(folder);
    }

    private List<String> problems(String words, String phrases) throws IOException {
        return read(words, phrases).problems().stream().map(Problem::text).toList();
    }

    @Test
    void phrasesAreTakenAsWritten() throws IOException {
        Reading reading =
                read(WORDS, "{past: true, en: {yes: ['@inner black|dark !lid']}, follows: {no: [{alive: yes}]}}");
        assertThat(reading.problems()).isEmpty();
        Phrases phrases = reading.ruleBook().orElseThrow().observations().values().stream()
                .map(o -> o.phrases())
                .filter(p -> p.past())
                .findFirst()
                .orElseThrow();
        Phrase phrase =
                Objects.requireNonNull(phrases.byLanguage().get("en")).yes().get(0);
        assertThat(phrase.terms())
                .containsExactly(
                        new Phrase.Term(Phrase.Mode.PRESENT, List.of("@inner")),
                        new Phrase.Term(Phrase.Mode.PRESENT, List.of("black", "dark")),
                        new Phrase.Term(Phrase.Mode.ABSENT, List.of("lid")));
        assertThat(phrases.conclusions()).containsExactly(new Phrases.Conclusion(false, Map.of("alive", true)));
    }

    @Test
    void aWordSetThatIsNotThereIsTold() throws IOException {
        assertThat(problems(WORDS, "{en: {yes: ['@iner black']}}"))
                .singleElement()
                .asString()
                .contains("questions.yaml:", "\"iner\" is not a word set of language \"en\"", "inner");
    }

    @Test
    void aPhraseWithoutATermThatMustBeMetIsTold() throws IOException {
        assertThat(problems(WORDS, "{en: {yes: ['!lid']}}"))
                .singleElement()
                .asString()
                .contains("is no phrase: it has no term that must be met");
    }

    @Test
    void anUnknownLanguageIsTold() throws IOException {
        assertThat(problems(WORDS, "{fr: {yes: [noir]}}"))
                .singleElement()
                .asString()
                .contains("\"fr\" is not a key of \"phrases\"");
    }

    @Test
    void aConclusionFromNothingKnownIsTold() throws IOException {
        assertThat(problems(WORDS, "{follows: {yes: [{alife: yes}]}}"))
                .singleElement()
                .asString()
                .contains("\"alife\" is not an observation");
    }

    @Test
    void aSetTakesInOnlySetsAboveIt() throws IOException {
        assertThat(problems(WORDS.replace("screen: [screen]", "screen: ['@inner']"), "{en: {yes: [black]}}"))
                .singleElement()
                .asString()
                .contains("words.yaml:", "which does not stand before it");
    }

    @Test
    void aTopicThatIsNoSetIsTold() throws IOException {
        assertThat(problems(WORDS.replace("topics: [screen, inner]", "topics: [screeen]"), "{en: {yes: [black]}}"))
                .singleElement()
                .asString()
                .contains("\"screeen\" is not a word set of this language");
    }

    private static final String EXAMPLES = """
            examples:
              en-own:
                language: en
                sentences:
                  OBSERVATION:
                    yes: |
                      it is dark

                      not a light in it
                silent: |
                  collection only
                because: Invented for a test.
                source: invented
            """;

    /** The small rule book with examples of one of its observations. */
    private WholeReading withExamples(String examples) throws IOException {
        String observation = SmallBook.whole()
                .readIn(Files.createDirectory(folder.resolve("whole")))
                .ruleBook()
                .orElseThrow()
                .observations()
                .keySet()
                .iterator()
                .next();
        SmallBook.whole().with("words.yaml", WORDS).readIn(folder);
        Path inner = Files.createDirectory(folder.resolve("examples"));
        Files.writeString(inner.resolve("own.yaml"), "format: 1\n" + examples.replace("OBSERVATION", observation));
        return RuleBookReader.readWhole(new Folder(folder, ""));
    }

    private List<String> problemsWith(String examples) throws IOException {
        return withExamples(examples).reading().problems().stream()
                .map(Problem::text)
                .toList();
    }

    @Test
    void eachLineOfExamplesIsASentence() throws IOException {
        WholeReading whole = withExamples(EXAMPLES);
        assertThat(whole.reading().problems()).isEmpty();
        assertThat(whole.examples()).singleElement().satisfies(examples -> {
            assertThat(examples.language()).isEqualTo("en");
            assertThat(examples.sentences().values()).singleElement().satisfies(a -> {
                assertThat(a.yes()).containsExactly("it is dark", "not a light in it");
                assertThat(a.no()).isEmpty();
            });
            assertThat(examples.silent()).containsExactly("collection only");
        });
    }

    @Test
    void aListOfExamplesIsTold() throws IOException {
        assertThat(problemsWith(EXAMPLES.replace("silent: |\n      collection only", "silent: [collection only]")))
                .singleElement()
                .asString()
                .contains("examples/own.yaml:", "\"silent\" is a list, where a block of lines should be");
    }

    @Test
    void aBadExampleIsToldWithItsOwnLine() throws IOException {
        String examples = EXAMPLES.replace("not a light in it", "not a\u202elight in it")
                .replace("silent: |\n", "silent: |2\n\n\n");
        assertThat(problemsWith(examples.replace("collection only", "colle\u200bction only")))
                .satisfiesExactly(
                        first -> assertThat(first).startsWith("examples/own.yaml:10: \"not a"),
                        second -> assertThat(second).startsWith("examples/own.yaml:14: \"colle"));
    }

    @Test
    void aBadExampleInATextThatDoesNotKeepItsLinesIsToldWhereTheTextBegins() throws IOException {
        assertThat(problemsWith(
                        EXAMPLES.replace("silent: |\n      collection only", "silent: \"first\\nsec\u202eond\"")))
                .singleElement()
                .asString()
                .startsWith("examples/own.yaml:11: ");
    }

    @Test
    void anExampleOfAnUnknownObservationIsTold() throws IOException {
        assertThat(problemsWith(EXAMPLES.replace("OBSERVATION", "no-imagg")))
                .containsExactly("examples/own.yaml:6: \"no-imagg\" is not an observation. Did you mean \"no-image\"?");
    }

    @Test
    void examplesAreReadOnlyFromTheirOwnFolder() throws IOException {
        String text = "format: 1\n" + EXAMPLES.replace("OBSERVATION", "no-image");
        SmallBook book = SmallBook.whole().with("words.yaml", WORDS).with("own.yaml", text);
        assertThat(book.readIn(folder).problems())
                .extracting(Problem::text)
                .containsExactly("own.yaml:2: the section \"examples\" belongs into the folder \"examples\" of the rule"
                        + " book. Move it into a file there.");
    }

    @Test
    void nothingElseStandsInTheFolderOfExamples() throws IOException {
        assertThat(problemsWith(EXAMPLES + "tools:\n  tweezers: {label: tweezers}\ntitel: x\n"))
                .satisfiesExactly(
                        first -> assertThat(first)
                                .isEqualTo("examples/own.yaml:15: the section \"tools\" belongs outside of the folder"
                                        + " \"examples\". Move it into a file there."),
                        second -> assertThat(second).contains("examples/own.yaml:17: \"titel\" is not a section"));
    }

    @Test
    void examplesAreLeftUnreadWhereNoTextsAreRead() throws IOException {
        assertThat(problemsWith(EXAMPLES.replace("language: en", "language: fr")))
                .hasSize(1);
        assertThat(RuleBookReader.read(new Folder(folder, "")).problems()).isEmpty();
    }

    @Test
    void trustWithoutOneOfItsWeightsIsTold() throws IOException {
        String trust = Arrays.stream(Trust.Mark.values())
                .filter(m -> m != Trust.Mark.RIVAL)
                .map(m -> "      " + m.id() + ": .5\n")
                .collect(Collectors.joining(
                        "", "    trust:\n      least: .5\n", "      because: A test.\n      source: invented\n"));
        assertThat(problems(
                        WORDS.replace(
                                "    because: Invented for a test.\n    source: invented\nhints:",
                                trust + "    because: Invented for a test.\n    source: invented\nhints:"),
                        "{en: {yes: [black]}}"))
                .singleElement()
                .asString()
                .contains("words.yaml:", "\"trust\" has no \"rival\"");
    }
}
