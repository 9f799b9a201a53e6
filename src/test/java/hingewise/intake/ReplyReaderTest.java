package hingewise.intake;

import static org.assertj.core.api.Assertions.assertThat;

import hingewise.intake.store.Readers;
import hingewise.rulebook.Observation;
import hingewise.rulebook.RuleBook;
import hingewise.rulebook.yaml.RuleBookReader;
import hingewise.rulebook.yaml.RuleFiles;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Replies to three questions: dropped? opened? does it charge neither way? Expectations are common sense, no source. */
class ReplyReaderTest {
    private static final RuleBook RULES =
            RuleBookReader.readShipped().ruleBook().orElseThrow();
    private static final List<Observation> ASKED = Stream.of("was-dropped", "was-opened", "charges-not-at-all")
            .map(id -> Objects.requireNonNull(RULES.observations().get(id)))
            .toList();

    private static final ReplyReader READER = new ReplyReader(RULES, Readers.of(RuleFiles.SHIPPED, RULES, () -> {}));

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            nullValues = "-",
            value = {
                "1 yes, 2 no idea|was-dropped=yes was-opened=cant-tell",
                "1. No 2. Yes 3. No|was-dropped=no was-opened=yes charges-not-at-all=no",
                "2) nein, 1) ja|was-opened=no",
                "1: weiß ich nicht 2: ja, in einer Werkstatt|was-dropped=cant-tell was-opened=yes",
                "3 it charges fine|charges-not-at-all=no",
                "1 no, it was dropped twice|-",
                "It was dropped once and it was never opened.|was-dropped=yes was-opened=no",
                "1 yes, about 2 years ago, 2 no|was-dropped=yes was-opened=no",
                "Thanks, will look tomorrow.|-",
                "7 yes|-",
            })
    void aReplyIsReadAsAnswers(String reply, String expected) {
        List<String> answers = READER.read(ASKED, reply).stream()
                .map(a -> a.observation().id() + "="
                        + a.answer().map(yes -> yes ? "yes" : "no").orElse("cant-tell"))
                .toList();
        assertThat(String.join(" ", answers)).isEqualTo(expected == null ? "" : expected);
    }
}
