package hingewise.wizard.view;

import hingewise.assessment.ShownCaution;
import hingewise.wizard.model.Page;
import hingewise.wizard.model.WizardModel;
import hingewise.wizard.model.WizardState;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;

/**
 * The cautions that apply. One that stops the work stays in full; warnings stand in full until they have been read, then
 * in one line that opens again.
 */
final class CautionBands extends VBox {
    private final WizardModel model;
    private Room room = Room.WIDE;
    private boolean opened;

    CautionBands(WizardModel model) {
        this.model = model;
        setId("cautions");
    }

    void arrange(Room now) {
        if (room != now) {
            room = now;
            show(model.state());
        }
    }

    void show(WizardState state) {
        List<Node> bands = new ArrayList<>();
        if (state.page() != Page.START) {
            state.cautions().stream()
                    .filter(ShownCaution::stops)
                    .forEach(c -> bands.add(
                            Bands.of("danger", Marks.STOP, Ui.text(c.caution().text()))));
            warnings(state).ifPresent(bands::add);
        }
        Focus.keeping(this, () -> getChildren().setAll(bands));
    }

    private Optional<Node> warnings(WizardState state) {
        List<ShownCaution> all =
                state.cautions().stream().filter(c -> !c.stops()).toList();
        List<ShownCaution> unread = state.unreadWarnings();
        if (all.isEmpty()) {
            return Optional.empty();
        }
        if (!unread.isEmpty()) {
            Button read = Ui.keyButton("I have read this", "R", () -> model.acknowledge(unread), "flat");
            read.setId("cautions-read");
            read.setMinWidth(USE_PREF_SIZE);
            return Optional.of(band(unread, read));
        }
        Button open = Bands.button("cautions-open", opened ? "Hide" : "Show", () -> {
            opened = !opened;
            show(model.state());
        });
        String count = all.size() == 1 ? "1 caution applies." : all.size() + " cautions apply.";
        return Optional.of(opened ? band(all, open) : Bands.of("warning", Marks.CAUTION, Ui.text(count), open));
    }

    private Node band(List<ShownCaution> cautions, Button button) {
        int across = room == Room.NARROW || cautions.size() == 1 ? 1 : 2;
        GridPane grid = new GridPane(24, 4);
        for (int i = 0; i < across; i++) {
            ColumnConstraints column = new ColumnConstraints();
            column.setPercentWidth(100.0 / across);
            grid.getColumnConstraints().add(column);
        }
        int down = (cautions.size() + across - 1) / across;
        for (int i = 0; i < cautions.size(); i++) {
            Label words = Ui.text(cautions.get(i).caution().text());
            GridPane.setValignment(words, VPos.TOP);
            grid.add(words, i / down, i % down);
        }
        return Bands.of("warning", Marks.CAUTION, grid, button);
    }
}
