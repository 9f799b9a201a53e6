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

/** What single keys do while nobody is typing: most of them while a question is shown. */
final class Keys {
    private static final int NUMBERED = 9;

    private final WizardModel model;
    private final Runnable search;
    private final Runnable readCautions;

    Keys(WizardModel model, Runnable search, Runnable readCautions) {
        this.model = model;
        this.search = search;
        this.readCautions = readCautions;
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
        boolean alone = !event.isControlDown() && !event.isAltDown() && !event.isMetaDown() && !event.isShiftDown();
        if (alone && (cautions(event) || listens(event) && (plain(event.getCode()) || answer(event)))) {
            event.consume();
        }
    }

    /** Handles a character: where it lies on the keyboard, and with which keys it is typed, differs by country. */
    void handleTyped(KeyEvent event) {
        if (listens(event) && event.getCharacter().equals("/")) {
            search.run();
            event.consume();
        }
    }

    private boolean listens(KeyEvent event) {
        return hears(event) && model.state().page() == Page.QUESTIONS;
    }

    /** Whether single keys mean anything: nobody is typing, and no caution must be read first. */
    private boolean hears(KeyEvent event) {
        WizardState state = model.state();
        return !(event.getTarget() instanceof TextInputControl)
                && state.page() != Page.START
                && state.unread().isEmpty();
    }

    /** Cautions stand over every page of a case, and so does the key that puts them away. */
    private boolean cautions(KeyEvent event) {
        boolean meant = hears(event) && event.getCode() == KeyCode.R;
        if (meant) {
            readCautions.run();
        }
        return meant;
    }

    private boolean plain(KeyCode code) {
        switch (code) {
            case U -> model.cantTell();
            case K -> model.leave();
            case B -> model.back();
            case J -> model.better().ifPresent(model::jump);
            case S -> model.evidence(EvidenceKind.CLAIM);
            case P -> model.evidence(EvidenceKind.PHOTO);
            case L -> model.evidence(EvidenceKind.LOOK);
            case M -> model.evidence(EvidenceKind.METER);
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
