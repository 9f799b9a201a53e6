package hingewise.rulebook.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import hingewise.rulebook.Phrase;
import hingewise.rulebook.Phrases;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
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
}
