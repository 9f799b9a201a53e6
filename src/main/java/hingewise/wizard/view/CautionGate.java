package hingewise.wizard.view;

import hingewise.assessment.ShownCaution;
import hingewise.wizard.model.WizardModel;
import hingewise.wizard.model.WizardState;
import java.util.List;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** A caution that stops the work, over everything else until the person says to have read it. */
final class CautionGate extends StackPane {
    private final WizardModel model;
    private Optional<String> shown = Optional.empty();

    CautionGate(WizardModel model) {
        this.model = model;
        setId("caution-gate");
        getStyleClass().add("gate");
        setVisible(false);
    }

    void show(WizardState state) {
        List<ShownCaution> unread = state.unread();
        Optional<String> first = unread.stream().map(c -> c.caution().id()).findFirst();
        setVisible(first.isPresent());
        if (!first.equals(shown)) {
            shown = first;
            getChildren().clear();
            unread.stream().findFirst().ifPresent(this::draw);
        }
    }

    private void draw(ShownCaution caution) {
        CheckBox read = new CheckBox("I have read this and will act on it");
        read.setId("caution-read");
        read.setAccessibleText(caution.caution().text() + " I have read this and will act on it");
        Button on = Ui.button("Go on", () -> model.acknowledge(List.of(caution)), "accent-button");
        on.setId("caution-go-on");
        on.disableProperty().bind(read.selectedProperty().not());
        VBox card = Ui.column(
                16,
                Ui.row(8, Ui.mark(Marks.STOP, "mark-danger"), Ui.text("Before anything else", "question")),
                Ui.text(caution.caution().text(), "caution-words"),
                Ui.text(
                        caution.caution().grounds().because() + " ("
                                + caution.caution().grounds().source() + ")",
                        "muted"),
                read,
                on);
        card.getStyleClass().add("gate-card");
        card.setMaxSize(560, USE_PREF_SIZE);
        getChildren().add(card);
        read.requestFocus();
    }
}
