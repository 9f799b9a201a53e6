package hingewise.wizard.view;

import hingewise.casefile.Report;
import hingewise.rulebook.Access;
import hingewise.rulebook.Confirmation;
import hingewise.rulebook.Observation;
import hingewise.rulebook.Question;
import hingewise.wizard.model.Recorder;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

/** Records that something was done, and asks what was seen then. What is left out was not looked at. */
final class TryForm extends VBox {
    private final Recorder recorder;
    private final Confirmation confirmation;
    private final Map<String, String> seen = new TreeMap<>();

    /** @param away puts the form away, whether or not it was recorded */
    TryForm(Recorder recorder, Confirmation confirmation, Runnable away) {
        super(8);
        this.recorder = recorder;
        this.confirmation = confirmation;
        setId("try-form");
        getStyleClass().add("form");
        List<Access> opening = recorder.opening(confirmation);
        if (!opening.isEmpty()) {
            getChildren()
                    .add(Ui.text(
                            "Also records that the phone was opened: "
                                    + opening.stream().map(Access::label).collect(Collectors.joining(", ")) + ".",
                            "muted"));
        }
        List<Observation> settled = recorder.settled(confirmation);
        if (!settled.isEmpty()) {
            getChildren().add(Ui.text("What was seen then? Leave out what was not looked at.", "name"));
        }
        settled.forEach(o -> getChildren().add(question(o)));
        Button record = Ui.button("Record it", () -> record(away), "accent-button");
        record.setId("try-record");
        record.setAccessibleText("Record as done: " + confirmation.label());
        Button later = Bands.button("try-away", "Not now", away);
        getChildren().add(new FlowPane(8, 8, record, later));
    }

    /** Puts the keyboard on the first thing to choose. */
    void focusFirst() {
        lookupAll(".button").stream().findFirst().ifPresent(Node::requestFocus);
    }

    private void record(Runnable away) {
        if (recorder.tried(confirmation, seen)) {
            away.run();
        }
    }

    private Node question(Observation observation) {
        FlowPane answers = new FlowPane(8, 4);
        for (String answer : List.of(Question.YES, Question.NO, Report.CANT_TELL)) {
            String words = answer.equals(Report.CANT_TELL) ? "Can't tell" : answer.equals(Question.YES) ? "Yes" : "No";
            Button button = Choices.of("seen-" + observation.id() + "-" + answer, words, () -> {});
            button.setAccessibleText(observation.question() + " " + words);
            button.setOnAction(e -> toggle(observation.id(), answer, answers, button));
            answers.getChildren().add(button);
        }
        return Ui.column(4, Ui.text(observation.question()), answers);
    }

    /** Choosing the chosen answer again leaves it out. */
    private void toggle(String observation, String answer, FlowPane answers, Button button) {
        boolean off = answer.equals(seen.get(observation));
        if (off) {
            seen.remove(observation);
        } else {
            seen.put(observation, answer);
        }
        Choices.choose(answers.getChildren(), off ? null : button);
    }
}
