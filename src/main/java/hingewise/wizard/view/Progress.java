package hingewise.wizard.view;

import hingewise.wizard.model.Page;
import hingewise.wizard.model.WizardModel;
import hingewise.wizard.model.WizardState;
import javafx.scene.control.Button;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.HBox;

/** Shows that the case is being reckoned, and stops it. It keeps its room when idle, so that nothing jumps. */
final class Progress extends HBox {
    private static final double BAR_WIDTH = 80;

    private final Button stop;

    Progress(WizardModel model) {
        super(8);
        getStyleClass().add("row");
        ProgressBar bar = new ProgressBar();
        bar.setAccessibleText("Reckoning");
        bar.setPrefWidth(BAR_WIDTH);
        stop = Ui.keyButton("Stop", "Esc", model::stopReckoning, "flat");
        stop.setId("stop");
        getChildren().addAll(Ui.line("Reckoning", "muted"), bar, stop);
        setMinWidth(USE_PREF_SIZE);
    }

    void show(WizardState state) {
        boolean running = state.reckoning().running() && state.page() != Page.START;
        setVisible(running);
        stop.setDisable(!running);
    }
}
