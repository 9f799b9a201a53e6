package hingewise.wizard.view;

import static org.assertj.core.api.Assertions.assertThat;

import hingewise.casefile.Report;
import hingewise.casefile.store.CaseFileStore;
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
import javafx.scene.Node;
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
class AtTheKeyboardTest {
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
    void aDemoCaseIsDoneWithoutTheMouse(FxRobot robot) {
        tabTo(robot, "demo-1");
        robot.type(KeyCode.ENTER);
        assertThat(sitting().file().title()).isEqualTo(DemoCase.TITLE);
        assertThat(focused()).isEqualTo("answer-1");

        int warnings = model.state().unreadWarnings().size();
        robot.type(KeyCode.R);
        assertThat(model.state().unreadWarnings()).hasSize(Math.max(0, warnings - 4));

        // Find a question by typing, answer it as one's own look.
        robot.write("/").write("screws").type(KeyCode.ENTER);
        String found = sitting().question().orElseThrow();
        assertThat(model.agenda()
                        .orElseThrow()
                        .item(found)
                        .orElseThrow()
                        .question()
                        .label())
                .contains("screw");
        robot.type(KeyCode.L).type(KeyCode.Y);
        Report given = model.answersTo(found).get(0);
        assertThat(given.about()).isEqualTo(found);
        assertThat(given.answer()).isEqualTo("yes");
        assertThat(given.kind()).isEqualTo(EvidenceKind.LOOK);

        // Back to it, change it, take it back.
        robot.type(KeyCode.B).type(KeyCode.N);
        assertThat(model.answersTo(found)).extracting(Report::answer).containsExactly("no");
        robot.type(KeyCode.B).type(KeyCode.DELETE);
        assertThat(model.answersTo(found)).isEmpty();

        // Looked at in vain is not the same as not looked at.
        String vain = sitting().question().orElseThrow();
        robot.type(KeyCode.U);
        assertThat(model.answersTo(vain)).extracting(Report::answer).containsExactly(Report.CANT_TELL);
        String left = sitting().question().orElseThrow();
        robot.type(KeyCode.K);
        assertThat(model.answersTo(left)).isEmpty();
        assertThat(sitting().setAside()).contains(left);

        window.dialogs.next = Optional.of(folder.resolve("kept.json"));
        robot.press(KeyCode.CONTROL).type(KeyCode.S).release(KeyCode.CONTROL);
        assertThat(CaseFileStore.read(folder.resolve("kept.json")))
                .isEqualTo(sitting().file());

        tabTo(robot, "occasion-note");
        robot.type(KeyCode.SPACE);
        assertThat(model.state().page()).isEqualTo(Page.NOTE);
    }

    @Test
    void aStoppingCautionIsReadBeforeAnythingElse(FxRobot robot) {
        window.run(() -> {
            model.openCopy(folder.resolve("demos").resolve("demo.json"));
            model.jump("back-bulges");
            model.evidence(EvidenceKind.LOOK);
        });
        robot.type(KeyCode.Y);
        assertThat(model.state().unread()).isNotEmpty();
        int before = sitting().file().entries().size();

        robot.type(KeyCode.Y).type(KeyCode.N).type(KeyCode.ESCAPE).type(KeyCode.K);
        assertThat(sitting().file().entries()).hasSize(before);
        assertThat(model.state().unread()).isNotEmpty();

        while (!model.state().unread().isEmpty()) {
            assertThat(focused()).isEqualTo("caution-read");
            robot.type(KeyCode.SPACE).type(KeyCode.TAB);
            assertThat(focused()).isEqualTo("caution-go-on");
            robot.type(KeyCode.SPACE);
        }
        assertThat(focused()).isEqualTo("answer-1");
        assertThat(texts()).anyMatch(t -> t.startsWith("Stop. A swollen"));
    }

    @Test
    void theHistoryIsWalkedWithTheArrowKeys(FxRobot robot) {
        window.run(() -> {
            model.openCopy(folder.resolve("demos").resolve("demo.json"));
            model.show(Page.HISTORY);
        });
        int last = sitting().file().entries().size();
        tabTo(robot, "stop-" + last);
        robot.type(KeyCode.LEFT);
        assertThat(model.history().state().chosen()).isEqualTo(last - 1);
        assertThat(focused()).isEqualTo("stop-" + (last - 1));
        robot.type(KeyCode.HOME).type(KeyCode.RIGHT);
        assertThat(focused()).isEqualTo("stop-1");
        tabTo(robot, "history-take-back");
        robot.type(KeyCode.SPACE);
        assertThat(sitting().file().standing()).hasSize(last - 1);
        assertThat(model.history().state().told().orElseThrow().stops().get(1).withdrawn())
                .isTrue();
    }

    private List<String> texts() {
        return window.get(() -> window.scene().getRoot().lookupAll("#cautions .label").stream()
                .map(n -> ((javafx.scene.control.Labeled) n).getText())
                .toList());
    }

    private void tabTo(FxRobot robot, String id) {
        for (int i = 0; i < 40 && !id.equals(focused()); i++) {
            robot.type(KeyCode.TAB);
        }
        assertThat(focused()).isEqualTo(id);
    }

    private String focused() {
        return window.get(() -> {
            Node owner = window.scene().getFocusOwner();
            return owner == null ? "nothing" : String.valueOf(owner.getId());
        });
    }

    private Sitting sitting() {
        return model.state().sitting().orElseThrow();
    }
}
