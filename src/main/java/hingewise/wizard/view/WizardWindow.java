package hingewise.wizard.view;

import hingewise.wizard.model.WizardModel;
import javafx.stage.Stage;

/** The wizard in a window of its own. */
public final class WizardWindow {
    private static final double WIDTH = 1280;
    private static final double HEIGHT = 800;
    private static final double NARROWEST = 600;
    private static final double LOWEST = 480;

    private WizardWindow() {}

    /** Shows the window at once; rule book and cases come in afterwards. */
    public static void show(Stage stage, WizardModel model) {
        WizardView view = new WizardView(model, new SystemFileDialogs(() -> stage), Theme.LIGHT);
        stage.setTitle("Hingewise");
        stage.setScene(view.inScene(WIDTH, HEIGHT));
        stage.setMinWidth(NARROWEST);
        stage.setMinHeight(LOWEST);
        stage.setOnCloseRequest(e -> {
            if (!view.mayClose()) {
                e.consume();
            }
        });
        stage.show();
        model.load();
    }
}
