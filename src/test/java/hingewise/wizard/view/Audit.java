package hingewise.wizard.view;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import javafx.event.Event;
import javafx.geometry.BoundingBox;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Control;
import javafx.scene.control.Labeled;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.image.PixelReader;
import javafx.scene.image.WritableImage;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.paint.Color;
import javafx.scene.text.Text;
import javafx.scene.text.TextFlow;

/**
 * Looks at a window the way a critical reader would: cut or overlapping words, contrast under 4.5:1 and targets under 24
 * pixels (WCAG 2.2, success criteria 1.4.3 and 2.5.8), controls without a name or out of the keyboard's reach.
 */
final class Audit {
    private static final double CONTRAST = 4.5;
    private static final double TARGET = 24;

    private final Scene scene;
    private final WritableImage picture;
    private final List<Node> shown = new ArrayList<>();

    Audit(Scene scene, WritableImage picture) {
        this.scene = scene;
        this.picture = picture;
        collect(scene.getRoot());
    }

    List<String> problems() {
        return Stream.of(cut(), overlapping(), pale(), small(), nameless(), unreachable())
                .flatMap(List::stream)
                .toList();
    }

    private void collect(Node node) {
        if (!node.isVisible() || node.isDisabled()) {
            return;
        }
        shown.add(node);
        if (node instanceof Parent parent) {
            parent.getChildrenUnmodifiable().forEach(this::collect);
        }
    }

    private <T extends Node> List<T> all(Class<T> type) {
        return shown.stream().filter(type::isInstance).map(type::cast).toList();
    }

    private List<String> cut() {
        List<String> cut = new ArrayList<>();
        for (Labeled labeled : all(Labeled.class)) {
            String words = labeled.getText();
            if (words == null || words.isEmpty()) {
                continue;
            }
            boolean whole = labeled.lookupAll(".text").stream()
                    .anyMatch(n -> n instanceof Text text && text.getText().equals(words));
            if (!whole || labeled.getHeight() + 1 < labeled.prefHeight(labeled.getWidth())) {
                cut.add("cut: \"" + words + "\"");
            }
        }
        for (Text text : all(Text.class)) {
            Bounds own = text.localToScene(text.getLayoutBounds());
            Bounds room = room(text);
            if (!text.getText().isEmpty()
                    && own.getMaxY() > room.getMinY()
                    && own.getMinY() < room.getMaxY()
                    && (own.getMinX() < room.getMinX() - 1 || own.getMaxX() > room.getMaxX() + 1)) {
                cut.add("runs out sideways: \"" + text.getText() + "\"");
            }
        }
        return cut;
    }

    /** What the window and the scrolled areas around it leave visible of a node's neighbourhood. */
    private Bounds room(Node node) {
        Bounds room = new BoundingBox(0, 0, scene.getWidth(), scene.getHeight());
        for (Node at = node.getParent(); at != null; at = at.getParent()) {
            if (at.getStyleClass().contains("viewport") || at instanceof TextField) {
                room = meet(room, at.localToScene(at.getLayoutBounds()));
            }
        }
        return room;
    }

    private static Bounds meet(Bounds a, Bounds b) {
        double x = Math.max(a.getMinX(), b.getMinX());
        double y = Math.max(a.getMinY(), b.getMinY());
        return new BoundingBox(
                x,
                y,
                Math.max(0, Math.min(a.getMaxX(), b.getMaxX()) - x),
                Math.max(0, Math.min(a.getMaxY(), b.getMaxY()) - y));
    }

    private Bounds visible(Node node) {
        return meet(room(node), node.localToScene(node.getLayoutBounds()));
    }

    private List<Text> readable() {
        return all(Text.class).stream()
                .filter(t -> !t.getText().isBlank())
                .filter(t -> visible(t).getWidth() > 2 && visible(t).getHeight() > 2)
                .filter(t -> !covered(t))
                .toList();
    }

    private boolean covered(Node node) {
        Node gate = scene.getRoot().lookup("#caution-gate");
        if (gate == null || !gate.isVisible()) {
            return false;
        }
        for (Node at = node; at != null; at = at.getParent()) {
            if (at == gate) {
                return false;
            }
        }
        return true;
    }

    private List<String> overlapping() {
        List<String> over = new ArrayList<>();
        List<Text> texts = readable();
        for (int i = 0; i < texts.size(); i++) {
            for (int j = i + 1; j < texts.size(); j++) {
                Bounds both = meet(visible(texts.get(i)), visible(texts.get(j)));
                // Pieces of one flowing text fill each other's lines, and their boxes meet.
                boolean flowing = texts.get(i).getParent() instanceof TextFlow
                        && texts.get(i).getParent() == texts.get(j).getParent();
                if (!flowing && both.getWidth() > 2 && both.getHeight() > 2) {
                    over.add("overlap: \"" + texts.get(i).getText() + "\" and \""
                            + texts.get(j).getText() + "\"");
                }
            }
        }
        return over;
    }

    private List<String> pale() {
        List<String> pale = new ArrayList<>();
        PixelReader pixels = picture.getPixelReader();
        for (Text text : readable()) {
            if (text.getFill() instanceof Color ink) {
                Color ground = ground(pixels, visible(text));
                double ratio = contrast(ink, ground);
                if (ratio < CONTRAST) {
                    pale.add(String.format(
                            Locale.ROOT, "contrast %.2f: \"%s\" %s on %s", ratio, text.getText(), ink, ground));
                }
            }
        }
        return pale;
    }

    /** The commonest colour behind the words: letters cover less than half of their box. */
    private Color ground(PixelReader pixels, Bounds box) {
        Map<Integer, Integer> count = new HashMap<>();
        for (int x = (int) box.getMinX(); x < Math.min(box.getMaxX(), picture.getWidth()); x++) {
            for (int y = (int) box.getMinY(); y < Math.min(box.getMaxY(), picture.getHeight()); y++) {
                count.merge(pixels.getArgb(x, y), 1, Integer::sum);
            }
        }
        int argb = count.entrySet().stream()
                .max(Map.Entry.comparingByValue())
                .map(Map.Entry::getKey)
                .orElse(0xffffffff);
        return Color.rgb(argb >> 16 & 0xff, argb >> 8 & 0xff, argb & 0xff);
    }

    /** WCAG 2.2, "contrast ratio": (L1 + 0.05) / (L2 + 0.05) of the relative luminances. */
    static double contrast(Color a, Color b) {
        double first = luminance(a) + .05;
        double second = luminance(b) + .05;
        return Math.max(first, second) / Math.min(first, second);
    }

    private static double luminance(Color c) {
        return .2126 * linear(c.getRed()) + .7152 * linear(c.getGreen()) + .0722 * linear(c.getBlue());
    }

    private static double linear(double channel) {
        return channel <= .04045 ? channel / 12.92 : Math.pow((channel + .055) / 1.055, 2.4);
    }

    private List<Control> controls() {
        return all(Control.class).stream()
                .filter(c -> c.isFocusTraversable() && !covered(c))
                .toList();
    }

    private List<String> small() {
        return controls().stream()
                .filter(c -> c.getWidth() < TARGET || c.getHeight() < TARGET)
                .map(c -> "target " + c.getWidth() + " by " + c.getHeight() + ": " + name(c))
                .toList();
    }

    private List<String> nameless() {
        return controls().stream()
                .filter(c ->
                        c.getAccessibleText() == null || c.getAccessibleText().isBlank())
                .map(c -> "no accessible name: " + c)
                .toList();
    }

    private List<String> unreachable() {
        Set<Node> reached = new LinkedHashSet<>();
        Node before = scene.getFocusOwner();
        Map<ScrollPane, Double> scrolled = new HashMap<>();
        all(ScrollPane.class).forEach(p -> scrolled.put(p, p.getVvalue()));
        int most = controls().size() + 2;
        for (int i = 0; i < most && scene.getFocusOwner() != null; i++) {
            reached.add(scene.getFocusOwner());
            Event.fireEvent(
                    scene.getFocusOwner(),
                    new KeyEvent(KeyEvent.KEY_PRESSED, "", "", KeyCode.TAB, false, false, false, false));
        }
        if (before != null) {
            before.requestFocus();
        }
        scrolled.forEach(ScrollPane::setVvalue);
        return controls().stream()
                .filter(c -> !reached.contains(c) && !(c instanceof ScrollPane))
                .map(c -> "not reached by Tab: " + name(c))
                .toList();
    }

    private static String name(Control control) {
        return control.getId() + " (" + control.getAccessibleText() + ")";
    }
}
