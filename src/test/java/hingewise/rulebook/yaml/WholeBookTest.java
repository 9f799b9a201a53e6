package hingewise.rulebook.yaml;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.entry;

import hingewise.rulebook.ByFamily;
import hingewise.rulebook.Choice;
import hingewise.rulebook.Confirmation;
import hingewise.rulebook.EvidenceKind;
import hingewise.rulebook.Grounds;
import hingewise.rulebook.Marginal;
import hingewise.rulebook.Moment;
import hingewise.rulebook.Observation;
import hingewise.rulebook.Raise;
import hingewise.rulebook.Reliability;
import hingewise.rulebook.RuleBook;
import hingewise.rulebook.RuleCase.Seen;
import hingewise.rulebook.Sign;
import hingewise.rulebook.Words;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the small rule book says, value by value; the format is that of rules/README.md. */
class WholeBookTest {
    private final RuleBook book;

    WholeBookTest(@TempDir Path folder) throws IOException {
        Reading reading = SmallBook.whole().readIn(folder);
        assertThat(reading.problems()).isEmpty();
        book = reading.ruleBook().orElseThrow();
    }

    @Test
    void benchWordsAndReliabilityAreTakenAsWritten() {
        assertThat(book.title()).isEqualTo("A small rule book");
        assertThat(book.bench().currency()).isEqualTo("EUR");
        assertThat(book.words().chances()).contains(new Words.Chance(.3, "possible"));
        assertThat(book.words().strengths())
                .containsExactly(entry("rarely", .025), entry("half", .5), entry("most", .8));
        assertThat(book.reliability()).hasSize(4).containsEntry(EvidenceKind.CLAIM, new Reliability(.75, .93));
    }

    @Test
    void strengthsAndRatesMayBeWords() {
        assertThat(book.histories().get("dropped").signs()).containsExactly(new Sign("dent", .5, Optional.empty()));
        assertThat(book.causes().get("flex-loose").baseRate()).isEqualTo(ByFamily.always(.0003));
        assertThat(book.causes().get("panel-broken").baseRate().in("clamshell")).isEqualTo(.05);
        assertThat(book.causes().get("panel-broken").baseRate().in("book")).isEqualTo(.03);
    }

    @Test
    void aLinkMayHaveAReasonOfItsOwn() {
        assertThat(book.causes().get("panel-broken").raisedBy())
                .containsExactly(new Raise("dropped", .25, Optional.of("Glass breaks.")));
        assertThat(book.causes().get("panel-broken").signs())
                .containsExactly(
                        new Sign("blobs", .8, Optional.empty()),
                        new Sign("no-image", .5, Optional.of("Its lines are cut.")));
    }

    @Test
    void anObservationIsCompletedByWhatIsSaidOfAll() {
        Observation blobs = book.observations().get("blobs");
        assertThat(blobs.reliability())
                .hasSize(4)
                .containsEntry(EvidenceKind.CLAIM, new Reliability(.6, .95))
                .containsEntry(EvidenceKind.LOOK, new Reliability(.95, .98));
        assertThat(blobs.repeat()).isEqualTo(.8);
        assertThat(book.observations().get("dent").repeat()).isEqualTo(.9);
        assertThat(blobs.families()).containsExactlyInAnyOrder("clamshell", "book");
        assertThat(blobs.needs()).containsExactly(entry("no-image", false));
        assertThat(blobs.moments()).containsExactly(Moment.ARRIVAL);
        assertThat(blobs.grounds()).isEqualTo(new Grounds("Broken panels bleed.", "common practice"));
    }

    @Test
    void aFitfulSignIsReadAfreshAtEveryLook() {
        assertThat(book.observations().get("no-image").fitful()).isEqualTo(OptionalDouble.of(.4));
        assertThat(book.observations().get("no-image").repeat()).isZero();
    }

    @Test
    void answersOfAChoiceKeepTheirOrder() {
        Choice choice = book.choices().get("power-on");
        assertThat(choice.answers().keySet()).containsExactly("image", "dark");
        assertThat(choice.answers().get("dark").settles()).containsExactly(entry("no-image", true));
    }

    @Test
    void aConfirmationIsTakenAsWritten() {
        Confirmation reseat = book.confirmations().get("reseat-flex");
        assertThat(reseat.kind()).isEqualTo(Confirmation.Kind.TRY);
        assertThat(reseat.minutes()).isEqualTo(5);
        assertThat(reseat.cost()).isEqualTo("0.50");
        assertThat(reseat.access()).contains("shield-off");
        assertThat(reseat.cures()).containsExactly(entry("flex-loose", .95));
        assertThat(reseat.damages().always()).containsExactly(entry("panel-broken", .01));
        assertThat(reseat.moments()).containsExactlyInAnyOrder(Moment.OPENED, Moment.AFTER_REPAIR);
        assertThat(book.confirmations().get("ask-dropped").cost()).isZero();
    }

    @Test
    void accessPartsAndCautionsAreTakenAsWritten() {
        assertThat(book.pathTo(Optional.of("shield-off"))).extracting("id").containsExactly("back-off", "shield-off");
        assertThat(book.access().get("back-off").damages().always()).containsExactly(entry("panel-broken", .025));
        assertThat(book.access().get("back-off").damages().where())
                .containsExactly(entry("flex-loose", Map.of("panel-broken", .1)));
        assertThat(book.access().get("back-off").tools()).containsExactly("picks", "magnifier");
        assertThat(book.tools().get("picks").label()).isEqualTo("plastic picks");
        assertThat(book.parts().get("panel").alongside()).containsExactly("glue");
        assertThat(book.parts().get("glue").renews()).isEmpty();
        assertThat(book.cautions().get("sharp-glass").causes()).containsExactly(entry("panel-broken", .3));
        assertThat(book.cautions().get("work-on-paper").stops()).isTrue();
    }

    @Test
    void aCaseIsTakenAsWritten() {
        assertThat(book.cases()).singleElement().satisfies(c -> {
            assertThat(c.seen())
                    .containsExactly(
                            new Seen("no-image", "yes", EvidenceKind.LOOK),
                            new Seen("flex-torn", "yes", EvidenceKind.PHOTO),
                            new Seen("dent", "cant-tell", EvidenceKind.CLAIM),
                            new Seen("power-on", "dark", EvidenceKind.LOOK));
            assertThat(c.expect().leads()).contains("flex-torn");
            assertThat(c.expect().firstInside()).contains("look-inside");
            assertThat(c.expect().noCautions()).containsExactly("sharp-glass");
        });
    }

    @Test
    void recordsFromOutsideAreTakenAsWritten() {
        assertThat(book.marginals().get("broken-panels"))
                .isEqualTo(new Marginal(
                        "broken-panels",
                        "Broken panels",
                        Set.of("panel-broken"),
                        Set.of(),
                        .02,
                        .1,
                        Set.of("clamshell"),
                        new Grounds("Records say so.", "invented")));
    }

    @Test
    void everySectionIsRead() {
        assertThat(book.components()).hasSize(3);
        assertThat(book.families().get("book").components()).containsExactly("hinge", "inner-panel", "inner-flex");
        assertThat(book.causesOf("clamshell")).extracting("id").containsExactly("panel-broken");
    }
}
