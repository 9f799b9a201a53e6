package hingewise.wizard.view;

import static org.assertj.core.api.Assertions.assertThat;

import hingewise.assessment.Assessment;
import hingewise.assessment.Cautions;
import hingewise.assessment.ShownCaution;
import hingewise.casefile.Opened;
import hingewise.casefile.Price;
import hingewise.casefile.Report;
import hingewise.casefile.store.CaseFileStore;
import hingewise.planning.Step;
import hingewise.rulebook.Caution;
import hingewise.rulebook.EvidenceKind;
import hingewise.wizard.Bench;
import hingewise.wizard.DemoCase;
import hingewise.wizard.model.Page;
import hingewise.wizard.model.Sitting;
import hingewise.wizard.model.WizardModel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextArea;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

@ExtendWith(ApplicationExtension.class)
class WithTheMouseTest {
    @TempDir
    Path folder;

    private Stage stage;
    private WizardModel model;
    private Window window;

    @Start
    void start(Stage stage) {
        this.stage = stage;
    }

    @BeforeEach
    void open() throws Exception {
        Path demo = DemoCase.in(Files.createDirectories(folder.resolve("demos")));
        model = Bench.model(folder.resolve("cases"), demo);
        window = Window.open(stage, model, Theme.LIGHT, 1280, 800);
    }

    @Test
    void aListingIsReadAndItsClaimsAreTakenOneByOne(FxRobot robot) throws Exception {
        window.run(() -> model.startNew("book", "Grey"));
        robot.clickOn("#listing").clickOn("#listing-text");
        window.run(() -> ((TextArea) window.scene().lookup("#listing-text"))
                .setText("The inner screen is cracked. The back is not cracked."));
        robot.clickOn("#listing-read");
        assertThat(sitting().file().entries()).as("nothing enters unseen").isEmpty();
        robot.clickOn("#listing-accept-inner-crack-visible");
        robot.clickOn("#listing-refuse-back-cracked");
        assertThat(sitting().file().entries()).singleElement().isInstanceOfSatisfying(Report.class, r -> {
            assertThat(r.about()).isEqualTo("inner-crack-visible");
            assertThat(r.kind()).isEqualTo(EvidenceKind.CLAIM);
            assertThat(r.by()).isEqualTo("seller");
            assertThat(r.remark()).contains("inner screen is cracked");
        });
    }

    @Test
    void aDemoCaseIsDoneWithoutTheKeyboard(FxRobot robot) throws Exception {
        robot.clickOn("#demo-1");
        for (int unread = 20; unread > 0 && !model.state().unreadWarnings().isEmpty(); unread--) {
            robot.clickOn("#cautions-read");
        }
        assertThat(model.state().unreadWarnings()).isEmpty();
        robot.clickOn("#evidence-photo");
        String asked = sitting().question().orElseThrow();
        robot.clickOn("#answer-1");
        assertThat(model.answersTo(asked)).extracting(Report::kind).containsExactly(EvidenceKind.PHOTO);

        robot.clickOn("#back");
        robot.clickOn("#take-back-" + model.answersTo(asked).get(0).id());
        assertThat(model.answersTo(asked)).isEmpty();
        robot.clickOn("#cant-tell").clickOn("#not-checked");
        assertThat(sitting().setAside()).hasSize(1);

        String leading = model.state()
                .reckoning()
                .latest()
                .orElseThrow()
                .diagnosis()
                .causes()
                .get(0)
                .cause()
                .id();
        robot.clickOn("#cause-" + leading);
        assertThat(robot.lookup("Speaks for it").tryQuery()).isPresent();

        window.dialogs.next = Optional.of(folder.resolve("kept.json"));
        robot.clickOn("#save-as");
        assertThat(CaseFileStore.read(folder.resolve("kept.json")))
                .isEqualTo(sitting().file());

        robot.clickOn("#occasion-note");
        assertThat(model.state().page()).isEqualTo(Page.NOTE);
        assertThat(robot.lookup("Condition note").tryQuery()).isPresent();

        robot.clickOn("#theme").clickOn("#cases");
        assertThat(model.state().page()).isEqualTo(Page.START);
    }

    @Test
    void whatAStepCallsForStandsWithItAndIsCountedAbove(FxRobot robot) {
        window.run(() -> model.openCopy(folder.resolve("demos").resolve("demo.json")));
        while (!model.state().unreadWarnings().isEmpty()) {
            robot.clickOn("#cautions-read");
        }
        List<ShownCaution> carried =
                model.state().cautions().stream().filter(c -> !c.brought()).toList();
        assertThat(carried).isNotEmpty();
        assertThat(labels("#cautions")).anyMatch(t -> t.contains(carried.size() + " more come with the steps"));

        Assessment answer = model.state().reckoning().latest().orElseThrow();
        Step first = answer.tryFirst().get(0);
        List<Caution> own = Cautions.of(model.rules().orElseThrow(), first);
        assertThat(labels("#steps")).contains(own.size() + " cautions");
        robot.clickOn("#step-" + first.confirmation().id());
        assertThat(labels("#steps"))
                .containsAll(IntStream.range(0, own.size())
                        .mapToObj(i -> "Caution " + (i + 1) + ": " + own.get(i).text())
                        .toList());
        // Another step that calls for the same calls it up by number.
        Step other = answer.tryFirst().stream()
                .limit(3)
                .skip(1)
                .filter(s ->
                        Cautions.of(model.rules().orElseThrow(), s).stream().anyMatch(own::contains))
                .findFirst()
                .orElseThrow();
        String step = "#step-" + other.confirmation().id();
        window.run(() -> ((ButtonBase) window.scene().getRoot().lookup(step)).fire());
        assertThat(labels("#steps"))
                .filteredOn(t -> t.startsWith("Caution "))
                .extracting(t -> t.replaceFirst("^Caution \\d+: ", ""))
                .doesNotHaveDuplicates();
        assertThat(labels("#steps")).anyMatch(t -> t.matches("Cautions? [0-9, ]+ further up, too\\."));
    }

    private List<String> labels(String under) {
        return window.get(() -> window.scene().getRoot().lookupAll(under + " .label").stream()
                .map(n -> ((Labeled) n).getText())
                .toList());
    }

    @Test
    void whatIsDoneToThePhoneIsRecordedWhileThePageStays(FxRobot robot) {
        window.run(() -> model.openCopy(folder.resolve("demos").resolve("demo.json")));
        int before = sitting().file().entries().size();
        Page page = model.state().page();
        robot.clickOn("#record").clickOn("#record-opened");
        String outermost = model.recorder().openings().get(0).id();
        robot.clickOn("#record-open-" + outermost);
        assertThat(sitting().file().entries())
                .hasSize(before + 1)
                .last()
                .isInstanceOfSatisfying(
                        Opened.class, o -> assertThat(o.access()).isEqualTo(outermost));
        assertThat(model.state().page()).isEqualTo(page);
        assertThat(robot.lookup("#record-panel").query().isVisible()).isFalse();
    }

    @Test
    void aPriceIsRecordedAndABadOneStaysToBeCorrected(FxRobot robot) {
        window.run(() -> model.openCopy(folder.resolve("demos").resolve("demo.json")));
        int before = sitting().file().entries().size();
        robot.clickOn("#record").clickOn("#record-price");
        robot.clickOn("#record-price-amount").write("12,5").clickOn("#record-price-paid");
        assertThat(sitting().file().entries()).hasSize(before);
        assertThat(robot.lookup("#record-panel").query().isVisible()).isTrue();
        robot.clickOn("#record-price-amount").push(KeyCode.END).eraseText(4).write("120.50");
        robot.clickOn("#record-price-paid");
        assertThat(sitting().file().entries()).last().isInstanceOfSatisfying(Price.class, p -> {
            assertThat(p.what()).isEqualTo(Price.What.PAID);
            assertThat(p.amount()).hasToString("EUR 120.50");
        });
    }

    @Test
    void aCaseBeginsFromNothing(FxRobot robot) {
        robot.clickOn("#title").write("Green one").clickOn("#family-book");
        assertThat(sitting().file().phone().family()).isEqualTo("book");
        assertThat(sitting().question()).isPresent();
        assertThat(folder.resolve("cases").resolve("case-green-one.json")).exists();
    }

    private Sitting sitting() {
        return model.state().sitting().orElseThrow();
    }
}
