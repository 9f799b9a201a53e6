package hingewise.wizard.view;

import hingewise.wizard.model.Knowledge;
import hingewise.wizard.model.Page;
import hingewise.wizard.model.Saving;
import hingewise.wizard.model.WizardModel;
import hingewise.wizard.model.WizardState;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** What went wrong and what to do about it, across the window. */
final class Bands extends VBox {
    private final WizardModel model;
    private final Runnable saveAs;

    Bands(WizardModel model, Runnable saveAs) {
        this.model = model;
        this.saveAs = saveAs;
        setId("bands");
    }

    void show(WizardState state) {
        List<Node> bands = new ArrayList<>();
        if (state.knowledge() instanceof Knowledge.Failed failed) {
            bands.add(of(
                    "danger",
                    Marks.STOP,
                    Ui.text("The rule book cannot be used.\n" + failed.words()),
                    button("read-again", "Read it again", model::load)));
        }
        if (state.sitting().isPresent()) {
            saving(state.saving(), bands);
        }
        state.notice()
                .ifPresent(words -> bands.add(of(
                        "plain",
                        Marks.HALVES,
                        Ui.text(words),
                        button("notice-away", "Put away", model::putNoticeAway))));
        if (state.page() != Page.START) {
            state.reckoning()
                    .trouble()
                    .ifPresent(words -> bands.add(of(
                            "warning",
                            Marks.CAUTION,
                            Ui.text(words),
                            button("reckon", "Reckon again", model::reckon))));
        }
        Focus.keeping(this, () -> getChildren().setAll(bands));
    }

    private void saving(Saving saving, List<Node> bands) {
        Button elsewhere = button("save-elsewhere", "Save elsewhere …", saveAs);
        Label words = Ui.text(saving.words() + "\nYour answers are still here.");
        if (saving.status() == Saving.Status.FAILED) {
            bands.add(of("danger", Marks.STOP, words, button("save-again", "Try again", model::saveAgain), elsewhere));
        } else if (saving.status() == Saving.Status.CONFLICT) {
            bands.add(of(
                    "danger",
                    Marks.STOP,
                    words,
                    elsewhere,
                    button("open-again", "Open the file as it is now", model::openAgain)));
        }
    }

    /** A band of one kind: a mark, words, and what can be done. */
    static HBox of(String kind, String mark, Region words, Button... buttons) {
        HBox band = Ui.row(8, Ui.mark(mark, "mark-" + kind), Ui.growing(words));
        band.getChildren().addAll(buttons);
        band.setFillHeight(false);
        band.getStyleClass().addAll("band", "band-" + kind);
        return band;
    }

    static Button button(String id, String words, Runnable action) {
        Button button = Ui.button(words, action, "flat");
        button.setId(id);
        return button;
    }
}
