package hingewise.wizard.view;

import hingewise.rulebook.Family;
import hingewise.wizard.model.Knowledge;
import hingewise.wizard.model.Shelf;
import hingewise.wizard.model.WizardModel;
import hingewise.wizard.model.WizardState;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

/** Start a case, open one, or look at a demo case. */
final class StartPage extends VBox {
    private final WizardModel model;
    private final TextField title = new TextField();
    private final VBox families = Ui.column(8);
    private final VBox own = Ui.column(4);
    private final VBox demos = Ui.column(4);
    private final FlowPane columns = new FlowPane(16, 16);

    StartPage(WizardModel model, Runnable open) {
        super(16);
        this.model = model;
        getStyleClass().add("start");
        title.setId("title");
        title.setPromptText("e.g. blue clamshell, seller 14");
        title.setAccessibleText("What you call the phone");
        Button file = Ui.keyButton("Open a case file …", "Ctrl+O", open, "flat");
        file.setId("open-file");
        columns.getChildren()
                .addAll(
                        panel(
                                "A new case",
                                Ui.text("What do you call this phone?", "name"),
                                title,
                                Ui.text("How does it fold? This starts the case.", "name"),
                                families),
                        panel("Your cases", own, file),
                        panel(
                                "Demo cases",
                                Ui.text("Invented phones to try things on; a demo stays as it is.", "muted"),
                                demos));
        getChildren().add(columns);
    }

    private static VBox panel(String heading, Node... pieces) {
        VBox panel = Ui.column(8, Ui.heading(heading));
        panel.getChildren().addAll(pieces);
        panel.getStyleClass().add("start-panel");
        return panel;
    }

    void focusTitle() {
        title.requestFocus();
    }

    /** Lays the page out for a window of this width. */
    void arrange(double width) {
        double inner = width - 48;
        int across = width >= 1000 ? 3 : width >= 700 ? 2 : 1;
        double each = Math.floor((inner - 16 * (across - 1)) / across);
        columns.getChildren().forEach(c -> {
            ((VBox) c).setPrefWidth(each);
            ((VBox) c).setMaxWidth(each);
        });
        columns.setPrefWrapLength(inner);
    }

    void show(WizardState state) {
        Focus.keeping(this, () -> {
            if (state.knowledge() instanceof Knowledge.Ready ready) {
                families.getChildren()
                        .setAll(ready.assessor().rules().families().values().stream()
                                .map(this::family)
                                .toList());
            } else {
                families.getChildren()
                        .setAll(Ui.text(
                                state.knowledge() instanceof Knowledge.Loading
                                        ? "The rule book is being read …"
                                        : "The rule book cannot be used; see above.",
                                "muted"));
            }
            list(own, "own-", state.shelf().own(), model::open, "None in your case folder yet.");
            list(demos, "demo-", state.shelf().demos(), model::openCopy, "None found.");
        });
    }

    private Button family(Family family) {
        Button start = new Press(
                Ui.text(family.label()),
                "Start a case: " + family.label(),
                () -> model.startNew(family.id(), title.getText()));
        start.getStyleClass().add("accent-button");
        start.setId("family-" + family.id());
        return start;
    }

    private static void list(
            VBox box, String prefix, List<Shelf.Listed> cases, Consumer<java.nio.file.Path> open, String none) {
        if (cases.isEmpty()) {
            box.getChildren().setAll(Ui.text(none, "muted"));
            return;
        }
        List<Button> rows = new ArrayList<>();
        for (Shelf.Listed listed : cases) {
            rows.add(Ui.opener(
                    prefix + (rows.size() + 1),
                    Ui.column(0, Ui.text(listed.title(), "name"), Ui.text(listed.about(), "muted")),
                    "Open " + listed.title() + ", " + listed.about(),
                    () -> open.accept(listed.file())));
        }
        box.getChildren().setAll(rows);
    }
}
