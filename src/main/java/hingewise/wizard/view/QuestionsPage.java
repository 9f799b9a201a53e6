package hingewise.wizard.view;

import hingewise.wizard.model.WizardModel;
import hingewise.wizard.model.WizardState;
import java.util.Optional;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** The question in the middle; beside it the list of all questions, causes and steps, as far as there is room. */
final class QuestionsPage extends HBox {
    private final JumpPanel jump;
    private final QuestionCard card;
    private final CausesPanel causes;
    private final StepsPanel steps;
    private final VBox middle = Ui.column(16);
    private final VBox side = Ui.column(16);
    private final ScrollPane middleScroll;
    private final ScrollPane sideScroll;
    private Room room = Room.WIDE;
    private boolean listing;
    private Optional<String> shown = Optional.empty();

    QuestionsPage(WizardModel model) {
        jump = new JumpPanel(model, () -> list(false));
        card = new QuestionCard(model, this::search);
        causes = new CausesPanel(model);
        steps = new StepsPanel(model);
        middle.getStyleClass().add("middle");
        side.getStyleClass().add("side");
        middleScroll = Ui.scrolling(middle, "The question");
        sideScroll = Ui.scrolling(side, "Causes and steps");
        sideScroll.getStyleClass().add("side-scroll");
        arrange(Room.WIDE);
    }

    void focusAnswer() {
        card.focusAnswer();
    }

    void show(WizardState state) {
        Optional<String> question = state.sitting().flatMap(s -> s.question());
        if (!question.equals(shown)) {
            shown = question;
            middleScroll.setVvalue(0);
        }
        jump.show(state);
        card.show(state);
        causes.show(state);
        steps.show(state);
    }

    /** Puts the keyboard into the search over all questions. */
    void search() {
        list(true);
        jump.focusSearch();
    }

    private void list(boolean shown) {
        listing = shown;
        arrange(room);
        if (!shown) {
            card.focusAnswer();
        }
    }

    /** Lays the page out anew for this much room. */
    void arrange(Room now) {
        room = now;
        boolean beside = room == Room.WIDE;
        getChildren().clear();
        middle.getChildren().clear();
        side.getChildren().clear();
        middle.getChildren().add(listing && !beside ? jump : card);
        if (room == Room.NARROW) {
            if (!listing) {
                middle.getChildren().addAll(steps, causes);
            }
            getChildren().add(Ui.growing(middleScroll));
            return;
        }
        side.getChildren().addAll(causes, steps);
        if (beside) {
            getChildren().add(jump);
        }
        getChildren().addAll(Ui.growing(middleScroll), sideScroll);
    }
}
