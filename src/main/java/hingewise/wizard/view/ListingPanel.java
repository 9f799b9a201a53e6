package hingewise.wizard.view;

import hingewise.intake.Suggestion;
import hingewise.plain.Quoted;
import hingewise.wizard.model.ListingModel;
import hingewise.wizard.model.ListingState;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextArea;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.VBox;
import javafx.scene.text.Text;
import javafx.scene.text.TextFlow;

/** Takes the text of a listing and shows what it seems to claim, above whatever page is shown. */
final class ListingPanel extends VBox {
    private static final double TALLEST = 280;
    private static final int ROWS = 4;
    /** So much of the text stands before and behind the words that a suggestion rests on. */
    private static final int AROUND = 50;

    private final ListingModel model;
    private final TextArea text = new TextArea();
    private final Label said = Ui.text("", "muted");
    private final VBox rows = Ui.column(8);
    private final ScrollPane scroll = Ui.scrolling(rows, "What the listing seems to say");

    ListingPanel(ListingModel model) {
        super(8);
        this.model = model;
        setId("listing-panel");
        getStyleClass().add("record-panel");
        text.setId("listing-text");
        text.setPromptText("Paste the text of a listing here");
        text.setAccessibleText("The text of a listing");
        text.setWrapText(true);
        text.setPrefRowCount(ROWS);
        Button read = Ui.button("Read it", () -> model.read(text.getText()), "accent-button");
        read.setId("listing-read");
        // A text area keeps the tab key for itself, and nobody could leave it with the keyboard.
        text.addEventFilter(KeyEvent.KEY_PRESSED, e -> {
            if (e.getCode() == KeyCode.TAB && !e.isShiftDown()) {
                read.requestFocus();
                e.consume();
            }
        });
        scroll.setMaxHeight(TALLEST);
        getChildren()
                .addAll(
                        Ui.heading("Read a listing"),
                        text,
                        Ui.row(8, read, Bands.button("listing-away", "Put away", this::away), Ui.growing(said)),
                        scroll);
        model.stateProperty().addListener((o, was, is) -> show(is));
        show(model.state());
        away();
    }

    /** Shows the panel, or puts it away. */
    void toggle() {
        if (isVisible()) {
            away();
            return;
        }
        setVisible(true);
        setManaged(true);
        text.requestFocus();
    }

    void away() {
        setVisible(false);
        setManaged(false);
        text.clear();
        model.forget();
    }

    private void show(ListingState state) {
        said.setText(state.running() ? "Reading …" : state.said().orElse(""));
        boolean any = !state.open().isEmpty();
        boolean decided = rows.getChildren().size() > state.open().size();
        rows.getChildren()
                .setAll(state.open().stream().map(s -> row(state.text(), s)).toArray(Node[]::new));
        scroll.setVisible(any);
        scroll.setManaged(any);
        if (decided && any && isVisible()) {
            // One after the other with the keyboard alone.
            Node next = Focus.find(rows, "listing-accept-" + state.open().get(0).observation());
            if (next != null) {
                next.requestFocus();
            }
        }
    }

    private Node row(String whole, Suggestion s) {
        String statement = model.statement(s);
        Button accept = Ui.button("Accept", () -> model.accept(s), "accent-button");
        accept.setId("listing-accept-" + s.observation());
        accept.setAccessibleText("Accept: " + statement);
        Button refuse = Ui.button("Leave out", () -> model.refuse(s), "flat");
        refuse.setId("listing-refuse-" + s.observation());
        refuse.setAccessibleText("Leave out: " + statement);
        String firm = s.certainty() < Suggestion.PLAIN ? " (not said plainly)" : "";
        VBox words = Ui.column(2, Ui.text(statement + firm, "name"), quote(whole, s));
        return Ui.topRow(8, Ui.growing(words), accept, refuse);
    }

    /** The words it rests on, marked, within what stands around them. */
    private static Node quote(String whole, Suggestion s) {
        int far = Math.max(0, s.start() - AROUND);
        int from = far == 0 ? 0 : Math.min(s.start(), whole.indexOf(' ', far) + 1);
        int end = Math.min(whole.length(), s.end() + AROUND);
        int to = end == whole.length() ? end : Math.max(s.end(), whole.lastIndexOf(' ', end));
        Text before = new Text((from > 0 ? "… " : "") + Quoted.line(whole.substring(from, s.start())));
        Text marked = new Text(Quoted.line(s.quote()));
        Text after = new Text(Quoted.line(whole.substring(s.end(), to)) + (to < whole.length() ? " …" : ""));
        List.of(before, after).forEach(t -> t.getStyleClass().add("listing-around"));
        marked.getStyleClass().add("listing-quote");
        TextFlow flow = new TextFlow(before, marked, after);
        flow.setAccessibleText("Words of the listing: " + marked.getText());
        return flow;
    }
}
