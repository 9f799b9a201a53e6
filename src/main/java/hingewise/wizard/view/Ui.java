package hingewise.wizard.view;

import hingewise.assessment.CareOrder;
import hingewise.plain.Quoted;
import hingewise.rulebook.Caution;
import java.util.List;
import java.util.stream.Collectors;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.scene.shape.SVGPath;

/** The few pieces all views are made of. */
final class Ui {
    private Ui() {}

    /** Text that wraps and is never cut. */
    static Label text(String words, String... styles) {
        Label label = new Label(
                words.lines().map(Quoted::line).reduce((a, b) -> a + "\n" + b).orElse(""));
        label.getStyleClass().addAll(styles);
        label.setWrapText(true);
        label.setMinHeight(Region.USE_PREF_SIZE);
        return label;
    }

    /** Text in one line, as wide as it needs to be. */
    static Label line(String words, String... styles) {
        Label label = text(words, styles);
        label.setWrapText(false);
        label.setMinWidth(Region.USE_PREF_SIZE);
        return label;
    }

    /** The picture of a key. */
    static Label keyCap(String key) {
        return line(key, "key-cap");
    }

    static Button button(String words, Runnable action, String... styles) {
        Button button = new Button(words);
        button.getStyleClass().addAll(styles);
        button.setAccessibleText(words);
        button.setOnAction(e -> action.run());
        button.setMinWidth(Region.USE_PREF_SIZE);
        return button;
    }

    /** A button whose words wrap, with the key that does the same. */
    static Button keyButton(String words, String key, Runnable action, String... styles) {
        Press button = new Press(row(8, keyCap(key), growing(text(words))), words + ", key " + key, action);
        button.getStyleClass().addAll(styles);
        return button;
    }

    /** A whole row of a list that can be pressed. */
    static Button opener(String id, Region content, String accessibleText, Runnable action) {
        Press row = new Press(content, accessibleText, action);
        row.setId(id);
        row.getStyleClass().add("opener");
        return row;
    }

    static VBox column(double gap, Node... children) {
        VBox box = new VBox(gap, children);
        box.setFillWidth(true);
        return box;
    }

    static VBox column(double gap, List<? extends Node> children) {
        return column(gap, children.toArray(Node[]::new));
    }

    static HBox row(double gap, Node... children) {
        HBox box = new HBox(gap, children);
        box.getStyleClass().add("row");
        return box;
    }

    /** A row whose pieces stand at its top: words that wrap do not push figures down. */
    static HBox topRow(double gap, Node... children) {
        HBox box = new HBox(gap, children);
        box.setAlignment(Pos.TOP_LEFT);
        return box;
    }

    /** Takes the room that is left beside other pieces of a row. */
    static <T extends Region> T growing(T region) {
        HBox.setHgrow(region, Priority.ALWAYS);
        VBox.setVgrow(region, Priority.ALWAYS);
        region.setMaxWidth(Double.MAX_VALUE);
        return region;
    }

    static Region spring() {
        return growing(new Region());
    }

    static ScrollPane scrolling(Region content, String name) {
        ScrollPane scroll = new ScrollPane(content);
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.setFocusTraversable(false);
        scroll.setAccessibleText(name);
        return scroll;
    }

    static Label heading(String words) {
        return text(words, "heading");
    }

    /** A simple drawn shape; it says nothing that words beside it do not say. */
    static SVGPath mark(String path, String style) {
        SVGPath mark = new SVGPath();
        mark.setContent(path);
        mark.getStyleClass().addAll("mark", style);
        return mark;
    }

    /** Cautions in one block: in full what does not stand further up, the rest by number. */
    static VBox care(CareOrder.Care care) {
        VBox block = column(4);
        care.here()
                .forEach(c -> block.getChildren()
                        .add(text("Caution " + c.number() + ": " + c.caution().text())));
        if (!care.again().isEmpty()) {
            block.getChildren()
                    .add(text((care.again().size() == 1 ? "Caution " : "Cautions ")
                            + care.again().stream().map(String::valueOf).collect(Collectors.joining(", "))
                            + " further up, too."));
        }
        block.getStyleClass().add("caution-text");
        return block;
    }

    /** Cautions in one block, each in full. */
    static VBox cautions(List<Caution> cautions) {
        VBox block = column(4);
        cautions.forEach(c -> block.getChildren().add(text("Caution: " + c.text())));
        block.getStyleClass().add("caution-text");
        return block;
    }
}
