package hingewise.wizard.view;

import hingewise.casefile.Report;
import hingewise.rulebook.Choice;
import hingewise.rulebook.EvidenceKind;
import hingewise.rulebook.Question;
import hingewise.wizard.model.Page;
import hingewise.wizard.model.WizardModel;
import hingewise.wizard.model.WizardState;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;

/** What single keys do while a question is shown and nobody is typing. */
final class Keys {
    private static final int NUMBERED = 9;

    private final WizardModel model;
    private final Runnable search;

    Keys(WizardModel model, Runnable search) {
        this.model = model;
        this.search = search;
    }

    /** An answer and the key that gives it; an answer beyond the ninth has none. */
    record AnswerKey(String key, String id, Choice.Answer answer) {}

    /** Y and N for a yes/no question, else the digits. */
    static List<AnswerKey> answers(Question question) {
        boolean yesNo = question.answers().keySet().equals(Set.of(Question.YES, Question.NO));
        List<AnswerKey> keys = new ArrayList<>();
        for (Map.Entry<String, Choice.Answer> e : question.answers().entrySet()) {
            int number = keys.size() + 1;
            String key = yesNo
                    ? (e.getKey().equals(Question.YES) ? "Y" : "N")
                    : number <= NUMBERED ? Integer.toString(number) : "–";
            keys.add(new AnswerKey(key, e.getKey(), e.getValue()));
        }
        return keys;
    }

    /** The key that chooses whose evidence an answer is. */
    static String of(EvidenceKind kind) {
        return switch (kind) {
            case CLAIM -> "S";
            case PHOTO -> "P";
            case LOOK -> "L";
            case METER -> "M";
        };
    }

    /** Handles a key press before any control does. */
    void handle(KeyEvent event) {
        WizardState state = model.state();
        if (event.getTarget() instanceof TextInputControl
                || state.page() != Page.QUESTIONS
                || !state.unread().isEmpty()
                || event.isControlDown()
                || event.isAltDown()
                || event.isMetaDown()) {
            return;
        }
        if (plain(event.getCode()) || answer(event)) {
            event.consume();
        }
    }

    private boolean plain(KeyCode code) {
        switch (code) {
            case U -> model.cantTell();
            case K -> model.leave();
            case B -> model.back();
            case J -> model.better().ifPresent(model::jump);
            case R -> model.acknowledge(model.state().unreadWarnings());
            case S -> model.evidence(EvidenceKind.CLAIM);
            case P -> model.evidence(EvidenceKind.PHOTO);
            case L -> model.evidence(EvidenceKind.LOOK);
            case M -> model.evidence(EvidenceKind.METER);
            case SLASH -> search.run();
            case DELETE -> takeBack();
            case ESCAPE -> model.stopReckoning();
            default -> {
                return false;
            }
        }
        return true;
    }

    private void takeBack() {
        model.given().map(Report::id).ifPresent(model::takeBack);
    }

    private boolean answer(KeyEvent event) {
        String pressed = event.getCode().isDigitKey() || event.getCode().isKeypadKey()
                ? event.getText()
                : event.getCode().getName();
        Optional<AnswerKey> found = model.state()
                .sitting()
                .flatMap(s -> s.question())
                .flatMap(q -> model.rules()
                        .flatMap(r -> r.question(q))
                        .flatMap(question -> answers(question).stream()
                                .filter(a -> a.key().equals(pressed))
                                .findFirst()));
        found.ifPresent(a -> model.answer(a.id()));
        return found.isPresent();
    }
}
