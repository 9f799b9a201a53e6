package hingewise.wizard.view;

import java.util.List;
import javafx.css.PseudoClass;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.FlowPane;
import org.jspecify.annotations.Nullable;

/** Small buttons of which one is chosen, or none. */
final class Choices {
    private static final PseudoClass CHOSEN = PseudoClass.getPseudoClass("chosen");

    private Choices() {}

    /** One of them. */
    static Button of(String id, String words, Runnable action) {
        Button button = Ui.button(words, action, "choice-small");
        button.setId(id);
        button.setAccessibleRole(AccessibleRole.RADIO_BUTTON);
        return button;
    }

    /** Marks one as chosen, or none, and the others as not. */
    static void choose(List<? extends Node> among, @Nullable Node chosen) {
        among.stream().map(Button.class::cast).forEach(b -> {
            b.pseudoClassStateChanged(CHOSEN, b == chosen);
            String words = b.getAccessibleText().replaceFirst(", chosen$", "");
            b.setAccessibleText(b == chosen ? words + ", chosen" : words);
        });
    }

    static FlowPane flow(List<? extends Node> choices) {
        return new FlowPane(8, 8, choices.toArray(Node[]::new));
    }
}
