package hingewise.wizard.view;

import hingewise.assessment.ShownCaution;
import hingewise.wizard.model.Page;
import hingewise.wizard.model.WizardModel;
import hingewise.wizard.model.WizardState;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/**
 * The cautions that apply. One that stops the work stays in full; warnings that the case brings up stand in full until
 * they have been read, then in one line that opens again. Those that come with a step or a part stand there, and are
 * counted here.
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
                            Bands.of("danger", Marks.STOP, Ui.text(c.caution().text() + "\n" + ShownCaution.LIFTED))));
            warnings(state).ifPresent(bands::add);
        }
        Focus.keeping(this, () -> getChildren().setAll(bands));
    }

    /** The person says to have read the warnings that stand in full. */
    void read() {
        model.acknowledge(shown(model.state().unreadWarnings()));
    }

    /** As many at a time as a person will read, and as leave room for the question. */
    private List<ShownCaution> shown(List<ShownCaution> unread) {
        return unread.stream().limit(room == Room.WIDE ? 4 : 2).toList();
    }

    private Optional<Node> warnings(WizardState state) {
        List<ShownCaution> all =
                state.cautions().stream().filter(c -> !c.stops()).toList();
        List<ShownCaution> unread = state.unreadWarnings();
        if (all.isEmpty()) {
            return Optional.empty();
        }
        if (!unread.isEmpty()) {
            List<ShownCaution> shown = shown(unread);
            String left = unread.size() > shown.size() ? ", " + (unread.size() - shown.size()) + " more" : "";
            Button read = Ui.keyButton("I have read this" + left, "R", this::read, "flat");
            read.setId("cautions-read");
            read.setMinWidth(USE_PREF_SIZE);
            return Optional.of(band(shown, read));
        }
        Button open = Bands.button("cautions-open", opened ? "Hide" : "Show", () -> {
            opened = !opened;
            show(model.state());
        });
        return Optional.of(opened ? band(all, open) : Bands.of("warning", Marks.CAUTION, Ui.text(counted(all)), open));
    }

    private static String counted(List<ShownCaution> all) {
        long brought = all.stream().filter(ShownCaution::brought).count();
        long carried = all.size() - brought;
        String read = brought + (brought == 1 ? " caution applies." : " cautions apply.");
        String ahead = carried + (brought > 0 ? " more" : carried == 1 ? " caution" : " cautions")
                + (carried == 1 ? " comes" : " come") + " with the steps and parts proposed: read what stands there"
                + " before you begin.";
        return brought == 0 ? ahead : carried == 0 ? read : read + " " + ahead;
    }

    private Node band(List<ShownCaution> cautions, Button button) {
        int across = room == Room.NARROW || cautions.size() == 1 ? 1 : 2;
        int down = (cautions.size() + across - 1) / across;
        HBox columns = Ui.topRow(24);
        for (int from = 0; from < cautions.size(); from += down) {
            VBox column = Ui.column(8);
            cautions.subList(from, Math.min(from + down, cautions.size()))
                    .forEach(c -> column.getChildren().add(Ui.text(c.caution().text())));
            column.setPrefWidth(0);
            columns.getChildren().add(Ui.growing(column));
        }
        return Bands.of("warning", Marks.CAUTION, columns, button);
    }
}
