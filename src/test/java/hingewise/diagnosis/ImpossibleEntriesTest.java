package hingewise.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import hingewise.casefile.Story;
import hingewise.rulebook.EvidenceKind;
import hingewise.rulebook.Rules;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ImpossibleEntriesTest {
    private static final Rules RULES = new Rules()
            .cause("x", .1)
            .observation("dark", .01)
            .sign("x", "dark", .9)
            .access("back-off", Map.of())
            .tryOut("reseat", Optional.of("back-off"), Map.of("x", .5), Map.of())
            .partFor("display", "x")
            .grade("pulled", .2);

    private static Story story() {
        return new Story(Rules.FAMILY);
    }

    private static void refused(Story story, String... phrases) {
        assertThatExceptionOfType(CaseException.class)
                .isThrownBy(() -> Readings.of(RULES.book(), story.told()))
                .satisfies(e -> assertThat(e.problems()).hasSize(phrases.length))
                .satisfies(e -> {
                    for (int i = 0; i < phrases.length; i++) {
                        assertThat(e.problems().get(i)).contains(phrases[i]);
                    }
                });
    }

    @Test
    void everyMistakeOfACaseIsToldAtOnce() {
        refused(
                story().look("drak", "yes").tried("reset").look("dark", "maybe").repaired("display", "puled"),
                "\"drak\" is not an observation. Did you mean \"dark\"?",
                "\"reset\" is not a confirmation. Did you mean \"reseat\"?",
                "\"maybe\" does not answer \"dark\". Use yes, no or cant-tell.",
                "\"puled\" is not a grade of part. Did you mean \"pulled\"?");
    }

    @Test
    void anInsideTryNeedsThePhoneOpen() {
        refused(
                story().tried("reseat"),
                "needs \"back-off\", and the phone was closed then. Record that it was opened");
        refused(story().opened("back-off").closed().tried("reseat"), "closed then");
        assertThat(Readings.of(
                                RULES.book(),
                                story().opened("back-off").tried("reseat").told())
                        .tried())
                .containsExactly("reseat");
    }

    @Test
    void whatAFamilyLacksCannotBeFitted() {
        refused(story().repaired("antenna", "pulled"), "\"antenna\" is not a part.");
    }

    @Test
    void aClaimAgainstALookIsAContradictionAndBothWeigh() {
        Story story = story().report(EvidenceKind.CLAIM, "seller", "dark", "no").look("dark", "yes");
        Readings readings = Readings.of(RULES.book(), story.told());

        assertThat(readings.contradictions())
                .singleElement()
                .satisfies(c ->
                        assertThat(c.readings()).extracting(r -> r.entry().by()).containsExactly("seller", "bench"));
        assertThat(readings.used()).hasSize(2);
    }

    @Test
    void aSymptomThatWentAwayWithATryIsNoContradiction() {
        Story story =
                story().look("dark", "yes").opened("back-off").tried("reseat").look("dark", "no");

        assertThat(Readings.of(RULES.book(), story.told()).contradictions()).isEmpty();
    }
}
