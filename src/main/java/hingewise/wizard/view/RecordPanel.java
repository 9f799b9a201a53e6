package hingewise.wizard.view;

import hingewise.casefile.Price;
import hingewise.rulebook.Confirmation;
import hingewise.rulebook.Grade;
import hingewise.rulebook.Part;
import hingewise.wizard.model.Recorder;
import hingewise.wizard.model.WizardModel;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

/** Records what is done to the phone, above whatever page is shown. It stays until it is put away. */
final class RecordPanel extends VBox {
    private static final double TALLEST = 240;

    private final WizardModel model;
    private final Map<String, Supplier<Node>> kinds = new LinkedHashMap<>();
    private final List<Button> tabs = new ArrayList<>();
    private final VBox body = Ui.column(8);
    private final ScrollPane scroll = Ui.scrolling(body, "What to record");
    private final Set<String> parts = new TreeSet<>();
    private Optional<String> grade = Optional.empty();

    RecordPanel(WizardModel model) {
        super(8);
        this.model = model;
        setId("record-panel");
        getStyleClass().add("record-panel");
        kinds.put("Tried", this::tries);
        kinds.put("Opened", this::openings);
        kinds.put("Closed", this::closing);
        kinds.put("Repaired", this::repair);
        kinds.put("Meanwhile", this::lapses);
        kinds.put("Price", this::price);
        kinds.keySet()
                .forEach(kind ->
                        tabs.add(Choices.of("record-" + kind.toLowerCase(Locale.ROOT), kind, () -> choose(kind))));
        FlowPane head = Choices.flow(tabs);
        head.getChildren().add(Bands.button("record-away", "Put away", this::away));
        scroll.setMaxHeight(TALLEST);
        getChildren().addAll(Ui.heading("Record what was done"), head, scroll);
        away();
    }

    /** Shows the panel, or puts it away. */
    void toggle() {
        if (isVisible()) {
            away();
            return;
        }
        parts.clear();
        grade = Optional.empty();
        setVisible(true);
        setManaged(true);
        choose(kinds.keySet().iterator().next());
        tabs.get(0).requestFocus();
    }

    void away() {
        setVisible(false);
        setManaged(false);
        body.getChildren().clear();
    }

    private void choose(String kind) {
        int index = List.copyOf(kinds.keySet()).indexOf(kind);
        Choices.choose(tabs, tabs.get(index));
        show(List.copyOf(kinds.values()).get(index).get());
    }

    private void show(Node piece) {
        body.getChildren().setAll(piece);
        scroll.setVvalue(0);
    }

    private Recorder recorder() {
        return model.recorder();
    }

    private void done(boolean recorded) {
        if (recorded) {
            away();
        }
    }

    private Node tries() {
        return Choices.flow(recorder().tries().stream().map(this::attempt).toList());
    }

    private Button attempt(Confirmation confirmation) {
        return Choices.of(
                "record-try-" + confirmation.id(),
                confirmation.label(),
                () -> show(Ui.column(
                        8, Ui.text(confirmation.label(), "name"), new TryForm(recorder(), confirmation, this::away))));
    }

    private Node openings() {
        return Choices.flow(recorder().openings().stream()
                .map(a -> Choices.of(
                        "record-open-" + a.id(),
                        a.label(),
                        () -> done(recorder().opened(a.id()))))
                .toList());
    }

    private Node closing() {
        Button closed =
                Ui.button("The phone was closed again", () -> done(recorder().closed()), "accent-button");
        closed.setId("record-closing");
        return Choices.flow(List.of(closed));
    }

    private Node price() {
        String currency = recorder().currency().orElse("");
        TextField amount = new TextField();
        amount.setId("record-price-amount");
        amount.setPromptText("120.00");
        amount.setAccessibleText("Amount in " + currency);
        return Ui.column(
                8,
                Ui.text("What does the phone itself cost, in " + currency + "?", "name"),
                amount,
                Choices.flow(List.of(
                        priced("record-price-asked", "The seller asks this", Price.What.ASKED, amount, currency),
                        priced("record-price-paid", "This was paid", Price.What.PAID, amount, currency))));
    }

    private Button priced(String id, String label, Price.What what, TextField amount, String currency) {
        return Choices.of(id, label, () -> done(recorder().price(what, amount.getText(), currency)));
    }

    private Node lapses() {
        return Choices.flow(recorder().lapses().stream()
                .map(l -> Choices.of(
                        "record-lapse-" + l.id(),
                        l.label(),
                        () -> done(recorder().meanwhile(l.id()))))
                .toList());
    }

    private Node repair() {
        List<Button> grades = new ArrayList<>();
        for (Grade known : recorder().grades()) {
            Button button = Choices.of("record-grade-" + known.id(), known.label(), () -> {});
            button.setOnAction(e -> {
                grade = Optional.of(known.id());
                Choices.choose(grades, button);
            });
            grades.add(button);
        }
        grades.stream()
                .filter(b -> grade.map(g -> "record-grade-" + g).equals(Optional.of(b.getId())))
                .forEach(b -> Choices.choose(grades, b));
        Button record = Ui.button(
                "Record the repair", () -> done(recorder().repaired(List.copyOf(parts), grade)), "accent-button");
        record.setId("record-repair");
        // Above the long list, where it is seen without scrolling.
        FlowPane kind = Choices.flow(grades);
        kind.getChildren().add(record);
        return Ui.column(
                8,
                Ui.text("Which parts were fitted, and what kind are they?", "name"),
                kind,
                Choices.flow(recorder().parts().stream().map(this::part).toList()));
    }

    private CheckBox part(Part part) {
        CheckBox box = new CheckBox(part.label());
        box.setId("record-part-" + part.id());
        box.setAccessibleText(part.label());
        box.setMinWidth(USE_PREF_SIZE);
        box.setSelected(parts.contains(part.id()));
        box.selectedProperty().addListener((o, was, is) -> {
            if (is) {
                parts.add(part.id());
            } else {
                parts.remove(part.id());
            }
        });
        return box;
    }
}
