package hingewise.wizard.model;

import static org.assertj.core.api.Assertions.assertThat;

import hingewise.assessment.Assessment;
import hingewise.casefile.CaseFile;
import hingewise.casefile.Report;
import hingewise.casefile.Withdrawal;
import hingewise.casefile.store.CaseFileStore;
import hingewise.rulebook.EvidenceKind;
import hingewise.wizard.Bench;
import hingewise.wizard.DemoCase;
import hingewise.wizard.Inline;
import hingewise.wizard.Later;
import hingewise.wizard.model.Item.Standing;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AnsweringTest {
    @TempDir
    Path folder;

    @Test
    void anAnswerIsSavedAsGiven() {
        WizardModel model = begun(Bench.model(folder));
        model.jump("dead-cover-screen");
        model.answer("yes");
        assertThat(CaseFileStore.read(folder.resolve("case-blue.json"))).isEqualTo(file(model));
        assertThat(model.state().saving().status()).isEqualTo(Saving.Status.SAVED);
    }

    @Test
    void anAnswerMovesTheCauses() {
        WizardModel model = begun(Bench.model(folder));
        double before = chance(model, "cover-cable-loose");
        model.jump("dead-cover-screen");
        model.answer("yes");
        assertThat(chance(model, "cover-cable-loose")).isGreaterThan(before);
    }

    @Test
    void aChangedAnswerWithdrawsTheFormerOfTheSameKindOnly() {
        WizardModel model = begun(Bench.model(folder));
        model.jump("back-loose");
        model.answer("no");
        model.jump("back-loose");
        model.evidence(EvidenceKind.PHOTO);
        model.answer("yes");
        model.jump("back-loose");
        model.answer("no");
        assertThat(model.answersTo("back-loose"))
                .extracting(Report::kind, Report::answer)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple(EvidenceKind.CLAIM, "no"),
                        org.assertj.core.groups.Tuple.tuple(EvidenceKind.PHOTO, "no"));
        assertThat(file(model).entries())
                .filteredOn(Withdrawal.class::isInstance)
                .hasSize(1);
    }

    @Test
    void anAnswerTakenBackLeavesTheChancesAsIfItHadNeverBeenGiven() {
        WizardModel model = begun(Bench.model(folder));
        double before = chance(model, "panel-fold-fracture");
        model.jump("crease-blobs");
        model.answer("yes");
        assertThat(chance(model, "panel-fold-fracture")).isNotEqualTo(before);
        model.takeBack(model.answersTo("crease-blobs").get(0).id());
        assertThat(chance(model, "panel-fold-fracture")).isEqualTo(before);
    }

    @Test
    void notTellingNotCheckingAndNoAreThreeDifferentThings() {
        WizardModel model = begun(Bench.model(folder));
        model.jump("crease-blobs");
        model.cantTell();
        model.jump("back-loose");
        model.leave();
        model.jump("was-wet");
        model.answer("no");
        Agenda agenda = model.agenda().orElseThrow();
        assertThat(agenda.item("crease-blobs").orElseThrow().standing()).isEqualTo(Standing.UNSURE);
        assertThat(agenda.item("back-loose").orElseThrow().standing()).isEqualTo(Standing.OPEN);
        assertThat(agenda.item("was-wet").orElseThrow().standing()).isEqualTo(Standing.ANSWERED);
        assertThat(file(model).entries()).hasSize(2);
    }

    @Test
    void whatCannotBeSeenIsNotAskedByItself() {
        WizardModel model = begun(Bench.model(folder));
        model.jump("no-sign-of-life");
        model.answer("yes");
        Agenda agenda = model.agenda().orElseThrow();
        assertThat(agenda.item("vibrates-no-image").orElseThrow().standing()).isEqualTo(Standing.NOT_ASKABLE);
        assertThat(agenda.next(model.state().reckoning().latest(), Occasion.BEFORE_BUYING, java.util.Set.of()))
                .doesNotContain("vibrates-no-image");
    }

    @Test
    void theQuestionThatTheFirstStepSettlesIsAskedFirst() throws java.io.IOException {
        Path demo = DemoCase.in(folder);
        WizardModel model = Bench.model(folder, demo);
        model.openCopy(demo);
        Assessment now = model.state().reckoning().latest().orElseThrow();
        assertThat(now.tryFirst()).isNotEmpty();
        List<String> looked = List.copyOf(now.tryFirst().get(0).confirmation().settles());
        String asked = model.state().sitting().orElseThrow().question().orElseThrow();
        assertThat(Bench.rules().question(asked).orElseThrow().answers().values())
                .anyMatch(a -> a.settles().keySet().stream().anyMatch(looked::contains));
    }

    @Test
    void theLatestAnswerWinsHoweverLateTheEarlierIsReckoned() {
        Later reckoning = new Later();
        WizardModel model = new WizardModel(Bench.setup(folder, List.of(), reckoning, new Inline()));
        model.load();
        reckoning.all();
        begun(model);
        reckoning.all();
        model.jump("crease-blobs");
        model.answer("yes");
        model.jump("crease-blobs");
        model.answer("no");
        assertThat(reckoning.waiting()).isEqualTo(2);
        reckoning.next();
        assertThat(model.state().reckoning().running()).isTrue();
        reckoning.next();
        assertThat(model.state().reckoning().latest().orElseThrow().file()).isEqualTo(file(model));
        assertThat(model.state().reckoning().running()).isFalse();
    }

    @Test
    void stoppedReckoningKeepsTheAnswerAndTheFiguresBefore() {
        Later reckoning = new Later();
        WizardModel model = new WizardModel(Bench.setup(folder, List.of(), reckoning, new Inline()));
        model.load();
        reckoning.all();
        begun(model);
        reckoning.all();
        Assessment before = model.state().reckoning().latest().orElseThrow();
        model.jump("crease-blobs");
        model.answer("yes");
        model.stopReckoning();
        reckoning.all();
        assertThat(model.state().reckoning().latest()).contains(before);
        assertThat(model.state().reckoning().trouble().orElseThrow()).startsWith("Stopped.");
        assertThat(file(model).entries()).hasSize(1);
    }

    private static WizardModel begun(WizardModel model) {
        model.startNew("clamshell", "Blue");
        return model;
    }

    private static CaseFile file(WizardModel model) {
        return model.state().sitting().orElseThrow().file();
    }

    private static double chance(WizardModel model, String cause) {
        assertThat(Bench.rules().causes()).containsKey(cause);
        return model.state().reckoning().latest().orElseThrow().diagnosis().chanceOf(cause);
    }
}
