package hingewise.wizard.view;

import hingewise.assessment.Assessment;
import hingewise.assessment.Cautions;
import hingewise.costing.Offer;
import hingewise.costing.OrderLine;
import hingewise.rulebook.Cause;
import hingewise.rulebook.Caution;
import hingewise.rulebook.Observation;
import hingewise.wizard.model.WizardModel;
import hingewise.wizard.model.WizardState;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import javafx.geometry.HPos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.joda.money.Money;

/** The last page: what to order, and the condition note. */
final class NotePage extends VBox {
    private final WizardModel model;
    private final Runnable export;

    NotePage(WizardModel model, Runnable export) {
        super(16);
        this.model = model;
        this.export = export;
        getStyleClass().add("note-page");
    }

    void show(WizardState state) {
        List<Node> pieces = new ArrayList<>();
        Optional<Assessment> latest = state.reckoning().latest();
        if (latest.isEmpty()) {
            pieces.add(panel("Parts and note", Ui.text("They show as soon as the case has been reckoned.", "muted")));
        } else {
            untested(latest.get()).ifPresent(pieces::add);
            pieces.add(parts(latest.get()));
            model.note().ifPresent(n -> pieces.add(NotePanel.of(n, () -> model.say("The note is on the clipboard."))));
        }
        Focus.keeping(this, () -> getChildren().setAll(pieces));
    }

    private static VBox panel(String heading, Node... pieces) {
        VBox panel = Ui.column(8, Ui.heading(heading));
        panel.getChildren().addAll(pieces);
        panel.getStyleClass().add("card");
        return panel;
    }

    private Node parts(Assessment assessment) {
        if (assessment.parts().order().isEmpty()) {
            VBox none = panel(
                    "Parts to order",
                    Ui.text(
                            assessment.stopped()
                                    ? "None while a caution stops the work."
                                    : assessment.parts().held().isEmpty()
                                            ? "None yet: no fault is sure enough to be paid for."
                                            : "None yet."));
            none.getChildren().addAll(held(assessment));
            return none;
        }
        GridPane grid = new GridPane(16, 8);
        ColumnConstraints words = new ColumnConstraints();
        words.setHgrow(Priority.ALWAYS);
        ColumnConstraints number = new ColumnConstraints();
        number.setHalignment(HPos.RIGHT);
        number.setMinWidth(USE_PREF_SIZE);
        grid.getColumnConstraints().addAll(words, number, number);
        grid.addRow(0, Ui.text("Part", "name"), Ui.line("Pieces", "name"), Ui.line("Price", "name"));
        int row = 1;
        for (OrderLine line : assessment.parts().order()) {
            grid.addRow(row++, what(line), Ui.line(Integer.toString(line.quantity()), "figure"), price(line));
        }
        assessment.parts().purchase().filter(p -> p.goods().isPositive()).ifPresent(p -> {
            if (!p.sending().isZero()) {
                sum(grid, Ui.text("Sending"), p.sending());
            }
            sum(grid, Ui.text("Together", "name"), p.paid());
        });
        Button save = Bands.button("export-parts", "Save the list as CSV …", export);
        VBox parts = panel("Parts to order", grid);
        parts.getChildren().addAll(held(assessment));
        parts.getChildren().add(save);
        List<Caution> cautions = cautions(assessment);
        if (!cautions.isEmpty()) {
            parts.getChildren().addAll(Ui.text("Before fitting them", "name"), Ui.cautions(cautions));
        }
        return parts;
    }

    /** What would be ordered, were there not a try that may make it needless. */
    private List<Label> held(Assessment assessment) {
        return assessment.parts().held().stream()
                .map(h -> Ui.text(
                        "Wait: do not order for \"" + causes(h.causes()) + "\" "
                                + h.until()
                                        .map(u -> "before \"" + u.label() + "\": it may make the order needless.")
                                        .orElse("before it is surer."),
                        "note"))
                .toList();
    }

    /** What fitting the parts calls for. */
    private List<Caution> cautions(Assessment assessment) {
        return model.rules().stream()
                .flatMap(r -> assessment.parts().order().stream().flatMap(p -> Cautions.of(r, p).stream()))
                .distinct()
                .toList();
    }

    /** The round of functions after a repair, as far as nobody has gone through it. */
    private Optional<Node> untested(Assessment assessment) {
        List<Observation> left = assessment.notTestedSinceRepair();
        if (left.isEmpty()) {
            return Optional.empty();
        }
        FlowPane rows = new FlowPane(8, 8);
        left.forEach(o ->
                rows.getChildren().add(Bands.button("retest-" + o.id(), o.label(), () -> model.jump(o.id()))));
        return Optional.of(panel(
                "Not tested since the repair",
                Ui.text("A repair changes the phone: look again before anything is promised.", "muted"),
                rows));
    }

    private Node what(OrderLine line) {
        String from = line.offer()
                .map(o -> o.supplier() + ", " + o.grade() + ", " + o.days() + (o.days() == 1 ? " day" : " days"))
                .orElse("the price book has no offer");
        return Ui.column(0, Ui.text(line.part().label()), Ui.text(from + " – for: " + causes(line.causes()), "muted"));
    }

    private static Node price(OrderLine line) {
        return Ui.line(
                line.offer()
                        .map(Offer::price)
                        .map(p -> p.multipliedBy(line.quantity()))
                        .map(Figures::money)
                        .orElse("–"),
                "figure");
    }

    private static void sum(GridPane grid, Node what, Money amount) {
        grid.addRow(grid.getRowCount(), what, Ui.line(""), Ui.line(Figures.money(amount), "figure"));
    }

    private String causes(Set<String> ids) {
        return ids.stream().map(this::cause).sorted().collect(Collectors.joining(", "));
    }

    private String cause(String id) {
        return model.rules()
                .flatMap(r -> Optional.ofNullable(r.causes().get(id)))
                .map(Cause::label)
                .orElse(id);
    }
}
