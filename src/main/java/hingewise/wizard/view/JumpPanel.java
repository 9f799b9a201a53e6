package hingewise.wizard.view;

import hingewise.wizard.model.Agenda;
import hingewise.wizard.model.Item;
import hingewise.wizard.model.WizardModel;
import hingewise.wizard.model.WizardState;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.VBox;
import javafx.scene.shape.SVGPath;

/**
 * Every question of the phone and how it stands; typing narrows the list. The list is one stop for Tab: Up and Down go
 * through it.
 */
final class JumpPanel extends VBox {
    private final WizardModel model;
    private final Runnable jumped;
    private final TextField search = new TextField();
    private final VBox list = Ui.column(0);
    private final Label count = Ui.text("", "muted");
    private final Map<String, Row> drawn = new HashMap<>();

    /** @param jumped what to do once a question has been chosen */
    JumpPanel(WizardModel model, Runnable jumped) {
        super(8);
        this.model = model;
        this.jumped = jumped;
        setId("jump");
        getStyleClass().addAll("panel", "jump");
        search.setId("search");
        search.setPromptText("Search, e.g. fold");
        search.setAccessibleText("Search the questions");
        search.textProperty().addListener((o, was, is) -> show(model.state()));
        search.setOnAction(e -> list.getChildren().stream().findFirst().ifPresent(n -> ((Button) n).fire()));
        search.addEventHandler(KeyEvent.KEY_PRESSED, this::leaveSearch);
        list.addEventFilter(KeyEvent.KEY_PRESSED, this::walk);
        getChildren().addAll(Ui.heading("All questions"), search, count, Ui.growing(Ui.scrolling(list, "Questions")));
    }

    void focusSearch() {
        search.requestFocus();
        search.selectAll();
    }

    void show(WizardState state) {
        List<Item> items = model.agenda().map(Agenda::items).orElse(List.of());
        Optional<String> current = state.sitting().flatMap(s -> s.question());
        List<Node> rows = new ArrayList<>();
        for (Item item : Agenda.matching(items, search.getText())) {
            rows.add(row(item, current.equals(Optional.of(item.question().id()))));
        }
        long answered = items.stream()
                .filter(i -> i.standing() == Item.Standing.ANSWERED)
                .count();
        count.setText(answered + " of " + items.size() + " answered"
                + (rows.size() < items.size() ? ", " + rows.size() + " shown" : ""));
        if (!list.getChildren().equals(rows)) {
            Focus.keeping(this, () -> list.getChildren().setAll(rows));
        }
        Node stop = rows.stream()
                .filter(r -> r.getStyleClass().contains("current"))
                .findFirst()
                .orElse(rows.isEmpty() ? null : rows.get(0));
        rows.forEach(r -> r.setFocusTraversable(r == stop));
    }

    /** The row as drawn before where nothing about it has changed: there are many, and answers come fast. */
    private Node row(Item item, boolean current) {
        String id = item.question().id();
        Row before = drawn.get(id);
        if (before != null && before.item().equals(item) && before.current() == current) {
            return before.node();
        }
        VBox words = Ui.growing(Ui.column(0, Ui.text(item.question().label())));
        if (!item.said().isEmpty()) {
            words.getChildren().add(Ui.text(item.said(), "muted"));
        }
        Button node = Ui.opener(
                "jump-" + id,
                Ui.row(8, mark(item.standing()), words),
                item.question().label() + ", " + (item.said().isEmpty() ? "not checked" : item.said()),
                () -> {
                    search.clear();
                    model.jump(id);
                    jumped.run();
                });
        if (current) {
            node.getStyleClass().add("current");
        }
        drawn.put(id, new Row(item, current, node));
        return node;
    }

    private record Row(Item item, boolean current, Button node) {}

    private void leaveSearch(KeyEvent event) {
        if (event.getCode() == KeyCode.ESCAPE) {
            search.clear();
            jumped.run();
            event.consume();
        } else if (event.getCode() == KeyCode.DOWN && !list.getChildren().isEmpty()) {
            list.getChildren().get(0).requestFocus();
            event.consume();
        }
    }

    private void walk(KeyEvent event) {
        int step = switch (event.getCode()) {
            case UP -> -1;
            case DOWN -> 1;
            default -> 0;
        };
        int at = list.getChildren().indexOf(event.getTarget());
        if (step == 0 || at < 0) {
            return;
        }
        if (at + step < 0) {
            focusSearch();
        } else if (at + step < list.getChildren().size()) {
            list.getChildren().get(at + step).requestFocus();
        }
        event.consume();
    }

    private static SVGPath mark(Item.Standing standing) {
        return switch (standing) {
            case OPEN -> Ui.mark(Marks.OPEN, "mark-open");
            case ANSWERED -> Ui.mark(Marks.DONE, "mark-done");
            case UNSURE -> Ui.mark(Marks.UNSURE, "mark-open");
            case NOT_ASKABLE -> Ui.mark(Marks.BARRED, "mark-open");
        };
    }
}
