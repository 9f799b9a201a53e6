package hingewise.wizard.view;

import static org.assertj.core.api.Assertions.assertThat;

import hingewise.rulebook.EvidenceKind;
import hingewise.wizard.Bench;
import hingewise.wizard.DemoCase;
import hingewise.wizard.Inline;
import hingewise.wizard.Later;
import hingewise.wizard.model.Occasion;
import hingewise.wizard.model.Page;
import hingewise.wizard.model.WizardModel;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.control.Button;
import javafx.scene.control.TextArea;
import javafx.stage.Stage;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

@ExtendWith(ApplicationExtension.class)
class PicturesTest {
    @TempDir
    static Path folder;

    private Stage stage;

    @Start
    void start(Stage stage) {
        this.stage = stage;
    }

    @Test
    void everyPageIsWholeLegibleAndInReach() throws Exception {
        Path demo = DemoCase.in(Files.createDirectories(folder.resolve("demos")));
        List<String> wrong = new ArrayList<>();
        for (Theme theme : Theme.values()) {
            Later money = new Later();
            WizardModel model = new WizardModel(
                    Bench.setup(folder.resolve("cases"), List.of(demo), new Inline(), money, new Inline()));
            model.load();
            Window window = Window.open(stage, model, theme, 1280, 800);
            String end = "-" + theme.name().toLowerCase(java.util.Locale.ROOT);
            window.run(() -> model.show(Page.START));
            everySize(window, "start" + end, wrong);
            window.run(() -> model.openCopy(demo));
            everySize(window, "question" + end, wrong);
            window.run(() -> model.acknowledge(model.state().unreadWarnings()));
            if (theme == Theme.LIGHT) {
                window.run(money::all);
                window.resize(1280, 800);
                wrong.addAll(window.picture("wizard", 1));
            }
            window.run(() -> {
                model.occasion(Occasion.ON_ARRIVAL);
                model.jump("power-on");
                fire(window, "cause-", 0);
                fire(window, "step-", 0);
            });
            window.run(() -> doneWithTheFirstStep(window).fire());
            everySize(window, "choice-opened" + end, wrong);
            window.run(() -> model.show(Page.NOTE));
            everySize(window, "note" + end, wrong);
            window.run(() -> model.show(Page.HISTORY));
            everySize(window, "history" + end, wrong);
            window.run(() -> model.show(Page.MONEY));
            window.run(money::all);
            everySize(window, "money" + end, wrong);
            window.run(() -> model.show(Page.SHEET));
            window.run(money::all);
            everySize(window, "sheet" + end, wrong);
            window.run(() -> ((Button) window.scene().lookup("#record")).fire());
            everySize(window, "record" + end, wrong);
            window.run(() -> ((Button) window.scene().lookup("#record-repaired")).fire());
            everySize(window, "record-repair" + end, wrong);
            window.run(() -> ((Button) window.scene().lookup("#record-price")).fire());
            everySize(window, "record-price" + end, wrong);
            window.run(() -> ((Button) window.scene().lookup("#record-away")).fire());
            window.run(() -> {
                ((Button) window.scene().lookup("#listing")).fire();
                ((TextArea) window.scene().lookup("#listing-text"))
                        .setText(
                                "Selling my folding phone. The inner screen is cracked and I think it was dropped once,"
                                        + " the outer screen works.");
                ((Button) window.scene().lookup("#listing-read")).fire();
            });
            everySize(window, "listing" + end, wrong);
            window.run(() -> ((Button) window.scene().lookup("#listing-away")).fire());
            window.run(() -> {
                model.evidence(EvidenceKind.LOOK);
                model.jump("back-bulges");
                model.answer("yes");
            });
            everySize(window, "stop" + end, wrong);
            window.run(() -> model.acknowledge(model.state().unread()));
            everySize(window, "stopped" + end, wrong);
        }
        assertThat(wrong).isEmpty();
    }

    @Test
    void theReadmesPictureIsOneOfThese() throws Exception {
        BufferedImage shown = ImageIO.read(Path.of("images-own", "wizard.png").toFile());
        assertThat(shown.getWidth()).isEqualTo(1280);
        assertThat(shown.getHeight()).isEqualTo(800);
    }

    private static void everySize(Window window, String name, List<String> wrong) {
        window.resize(1280, 800);
        wrong.addAll(window.picture(name + "-1280", 1));
        wrong.addAll(window.picture(name + "-1280-2x", 2));
        window.resize(1024, 700);
        wrong.addAll(window.picture(name + "-1024", 1));
        window.resize(600, 800);
        wrong.addAll(window.picture(name + "-600", 1));
    }

    private static Button doneWithTheFirstStep(Window window) {
        return window.scene().getRoot().lookupAll(".flat").stream()
                .filter(n -> n.getId() != null && n.getId().startsWith("done-"))
                .map(Button.class::cast)
                .findFirst()
                .orElseThrow();
    }

    private static void fire(Window window, String prefix, int index) {
        List<Button> found = window.scene().getRoot().lookupAll(".opener").stream()
                .filter(n -> n.getId() != null && n.getId().startsWith(prefix))
                .map(Button.class::cast)
                .toList();
        found.get(index).fire();
    }
}
