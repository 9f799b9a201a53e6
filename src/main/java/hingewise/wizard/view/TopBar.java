package hingewise.wizard.view;

import hingewise.wizard.model.Occasion;
import hingewise.wizard.model.Page;
import hingewise.wizard.model.Sitting;
import hingewise.wizard.model.WizardModel;
import hingewise.wizard.model.WizardState;
import java.util.Optional;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** The case and how it is kept, the occasions, and light or dark. */
final class TopBar extends VBox {
    private static final PseudoClass CHOSEN = PseudoClass.getPseudoClass("chosen");

    /** Where the tabs of the pages begin, after those of the occasions. */
    private static final int NOTE = Occasion.values().length;

    private static final double BUTTONS = 520;
    private static final double NAMED = 220;

    private final Label title = Ui.text("Hingewise", "title");
    private final Label saved = Ui.text("", "muted");
    private final FlowPane occasions = new FlowPane(8, 8);
    private final Button record;
    private final Button listing;
    private final Button cases;
    private final Button save;
    private final Button light;
    private final Progress progress;

    TopBar(WizardModel model, Runnable saveAs, Runnable record, Runnable listing, Runnable theme) {
        super(8);
        getStyleClass().add("top-bar");
        for (Occasion occasion : Occasion.values()) {
            occasions
                    .getChildren()
                    .add(tab("occasion-" + occasion.ordinal(), occasion.label(), () -> model.occasion(occasion)));
        }
        occasions.getChildren().add(tab("occasion-note", "Parts and note", () -> model.show(Page.NOTE)));
        occasions.getChildren().add(tab("occasion-history", "History", () -> model.show(Page.HISTORY)));
        occasions.getChildren().add(tab("occasion-money", "Money", () -> model.show(Page.MONEY)));
        occasions.getChildren().add(tab("occasion-sheet", "Bench sheet", () -> model.show(Page.SHEET)));
        this.record = Ui.button("Record …", record, "flat");
        this.record.setId("record");
        this.record.setAccessibleText("Record what was done to the phone");
        this.listing = Ui.button("Listing …", listing, "flat");
        this.listing.setId("listing");
        this.listing.setAccessibleText("Read the text of a listing");
        cases = Ui.button("Cases", () -> model.show(Page.START), "flat");
        cases.setId("cases");
        save = Ui.button("Save as …", saveAs, "flat");
        save.setId("save-as");
        light = Ui.button("", theme, "flat");
        light.setId("theme");
        progress = new Progress(model);
        // The buttons take a second line rather than the room of the title.
        FlowPane buttons = new FlowPane(8, 8, this.listing, this.record, save, cases, light);
        buttons.setAlignment(Pos.CENTER_RIGHT);
        buttons.setPrefWrapLength(BUTTONS);
        VBox named = Ui.growing(Ui.column(0, title, saved));
        named.setMinWidth(NAMED);
        HBox first = Ui.row(8, Ui.mark(Marks.HALVES, "mark-own"), named, buttons);
        HBox second = Ui.row(8, Ui.growing(occasions), progress);
        second.managedProperty().bind(occasions.visibleProperty());
        getChildren().addAll(first, second);
    }

    private static Button tab(String id, String words, Runnable action) {
        Button tab = Ui.button(words, action, "tab");
        tab.setId(id);
        tab.setAccessibleRole(AccessibleRole.RADIO_BUTTON);
        return tab;
    }

    /** Puts the keyboard on the tab of a page. */
    void focusTab(Page page) {
        occasions.getChildren().get(NOTE + page.ordinal() - Page.NOTE.ordinal()).requestFocus();
    }

    /** Offers the other theme. */
    void show(Theme theme) {
        light.setText(theme == Theme.LIGHT ? "Dark" : "Light");
        light.setAccessibleText(theme == Theme.LIGHT ? "Use dark colours" : "Use light colours");
    }

    void show(WizardState state) {
        progress.show(state);
        boolean inCase = state.page() != Page.START;
        Optional<Sitting> sitting = state.sitting();
        title.setText(sitting.filter(s -> inCase)
                .map(s -> hingewise.plain.Quoted.line(s.file().title())
                        + (s.file().invented() ? " (invented)" : ""))
                .orElse("Hingewise"));
        saved.setText(
                inCase
                        ? hingewise.plain.Quoted.line(state.saving().words())
                        : "What is wrong with this folding phone?");
        for (var part : new javafx.scene.Node[] {occasions, listing, record, save, cases}) {
            part.setVisible(inCase);
            part.setManaged(inCase);
        }
        sitting.ifPresent(s -> {
            for (Occasion occasion : Occasion.values()) {
                choose(occasion.ordinal(), state.page() == Page.QUESTIONS && s.occasion() == occasion);
            }
            choose(NOTE, state.page() == Page.NOTE);
            choose(NOTE + 1, state.page() == Page.HISTORY);
            choose(NOTE + 2, state.page() == Page.MONEY);
            choose(NOTE + 3, state.page() == Page.SHEET);
        });
    }

    private void choose(int index, boolean chosen) {
        Button tab = (Button) occasions.getChildren().get(index);
        tab.pseudoClassStateChanged(CHOSEN, chosen);
        tab.setAccessibleText(tab.getText() + (chosen ? ", chosen" : ""));
    }
}
