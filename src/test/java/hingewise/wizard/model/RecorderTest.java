package hingewise.wizard.model;

import static org.assertj.core.api.Assertions.assertThat;

import hingewise.casefile.CaseFile;
import hingewise.casefile.Entry;
import hingewise.casefile.Opened;
import hingewise.casefile.Repair;
import hingewise.casefile.Report;
import hingewise.casefile.Try;
import hingewise.casefile.store.CaseFileStore;
import hingewise.rulebook.Confirmation;
import hingewise.rulebook.EvidenceKind;
import hingewise.rulebook.Part;
import hingewise.wizard.Bench;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RecorderTest {
    @TempDir
    Path folder;

    @Test
    void aTryIsRecordedWithWhatWasSeenThenAndTheOpeningItTook() {
        WizardModel model = begun();
        Confirmation inside = model.recorder().tries().stream()
                .filter(c ->
                        c.access().isPresent() && !model.recorder().settled(c).isEmpty())
                .findFirst()
                .orElseThrow();
        String seen = model.recorder().settled(inside).get(0).id();
        assertThat(model.recorder().tried(inside, Map.of(seen, "no"))).isTrue();

        List<Entry> entries = file(model).entries();
        assertThat(entries.get(0))
                .isInstanceOfSatisfying(
                        Opened.class,
                        o -> assertThat(o.access()).isEqualTo(inside.access().orElseThrow()));
        assertThat(entries.get(1))
                .isInstanceOfSatisfying(
                        Try.class, t -> assertThat(t.confirmation()).isEqualTo(inside.id()));
        assertThat(entries.get(2)).isInstanceOfSatisfying(Report.class, r -> {
            assertThat(r.about()).isEqualTo(seen);
            assertThat(r.answer()).isEqualTo("no");
            assertThat(r.resultOf()).isEqualTo(Optional.of(entries.get(1).id()));
        });
        assertThat(entries).hasSize(3);
        assertThat(CaseFileStore.read(folder.resolve("case-blue.json"))).isEqualTo(file(model));

        assertThat(model.recorder().tried(inside, Map.of())).isTrue();
        assertThat(file(model).entries()).as("it is open already").hasSize(4);
    }

    @Test
    void aPartThatIsFittedInsideAClosedPhoneIsRefusedInWordsAndNothingIsLost() {
        WizardModel model = begun();
        Part inside = model.recorder().parts().stream()
                .filter(p -> p.access().isPresent())
                .findFirst()
                .orElseThrow();
        String grade = model.recorder().grades().get(0).id();
        CaseFile before = file(model);
        assertThat(model.recorder().repaired(List.of(inside.id()), Optional.of(grade)))
                .isFalse();
        assertThat(file(model)).isEqualTo(before);
        assertThat(model.state().notice().orElseThrow())
                .startsWith("This was not recorded: ")
                .contains("Record that it was opened first.");

        assertThat(model.recorder().opened(inside.access().orElseThrow())).isTrue();
        assertThat(model.recorder().repaired(List.of(inside.id()), Optional.of(grade)))
                .isTrue();
        assertThat(file(model).entries()).last().isInstanceOf(Repair.class);
    }

    @Test
    void aRepairNeedsPartsAndTheirKind() {
        WizardModel model = begun();
        assertThat(model.recorder().repaired(List.of(), Optional.of("any"))).isFalse();
        String part = model.recorder().parts().get(0).id();
        assertThat(model.recorder().repaired(List.of(part), Optional.empty())).isFalse();
        assertThat(file(model).entries()).isEmpty();
        assertThat(model.state().notice()).isPresent();
    }

    @Test
    void anAnswerAfterTimeOfChangeIsANewLookAndNoCorrection() {
        WizardModel model = begun();
        model.evidence(EvidenceKind.LOOK);
        model.jump("crease-blobs");
        model.answer("no");
        assertThat(model.recorder().meanwhile(model.recorder().lapses().get(0).id()))
                .isTrue();
        model.jump("crease-blobs");
        model.evidence(EvidenceKind.LOOK);
        assertThat(model.given()).isEmpty();
        model.answer("yes");
        assertThat(model.answersTo("crease-blobs")).extracting(Report::answer).containsExactly("no", "yes");
    }

    @Test
    void closingIsRecordedAndMakesOpeningAnOpenQuestionAgain() {
        WizardModel model = begun();
        Confirmation inside = model.recorder().tries().stream()
                .filter(c -> c.access().isPresent())
                .findFirst()
                .orElseThrow();
        assertThat(model.recorder().opened(inside.access().orElseThrow())).isTrue();
        assertThat(model.recorder().opening(inside)).isEmpty();
        assertThat(model.recorder().closed()).isTrue();
        assertThat(model.recorder().opening(inside)).isNotEmpty();
    }

    private WizardModel begun() {
        WizardModel model = Bench.model(folder);
        model.startNew("clamshell", "Blue");
        return model;
    }

    private static CaseFile file(WizardModel model) {
        return model.state().sitting().orElseThrow().file();
    }
}
