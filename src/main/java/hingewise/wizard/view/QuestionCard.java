package hingewise.wizard.view;

import hingewise.casefile.Report;
import hingewise.rulebook.Choice;
import hingewise.rulebook.EvidenceKind;
import hingewise.rulebook.Question;
import hingewise.wizard.model.Item;
import hingewise.wizard.model.Occasion;
import hingewise.wizard.model.Page;
import hingewise.wizard.model.Sitting;
import hingewise.wizard.model.WizardModel;
import hingewise.wizard.model.WizardState;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.css.PseudoClass;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** The question in the middle: what is asked, how to look, whose evidence the answer is, and the answers. */
final class QuestionCard extends VBox {
    private static final PseudoClass CHOSEN = PseudoClass.getPseudoClass("chosen");
    private static final String SHOWN = "shown";

    private final WizardModel model;
    private final Runnable allQuestions;
    private Optional<String> drawn = Optional.empty();
    private List<Button> answers = List.of();

    QuestionCard(WizardModel model, Runnable allQuestions) {
        super(16);
        this.model = model;
        this.allQuestions = allQuestions;
        setId("question-card");
        getStyleClass().add("card");
    }

    void show(WizardState state) {
        state.sitting().ifPresent(sitting -> {
            Optional<Item> item = sitting.question().flatMap(q -> model.agenda().flatMap(a -> a.item(q)));
            List<Node> pieces = item.map(i -> question(sitting, i)).orElseGet(() -> nothingLeft(state, sitting));
            Focus.keeping(this, () -> getChildren().setAll(pieces));
            boolean other = !drawn.equals(item.map(i -> i.question().id()));
            drawn = item.map(i -> i.question().id());
            if (other) {
                focusAnswer();
            }
        });
    }

    /** Puts the keyboard on the answer given, else on the first, so that Space, Enter and Tab go on from the question. */
    void focusAnswer() {
        answers.stream()
                .filter(b -> b.getPseudoClassStates().contains(CHOSEN))
                .findFirst()
                .or(() -> answers.stream().findFirst())
                .ifPresent(Node::requestFocus);
    }

    private List<Node> question(Sitting sitting, Item item) {
        Question question = item.question();
        List<Node> pieces = new ArrayList<>();
        pieces.add(moving(sitting));
        pieces.add(Ui.text(sitting.occasion().label() + " · " + question.label(), "muted"));
        pieces.add(Ui.text(question.question(), "question"));
        if (item.standing() == Item.Standing.NOT_ASKABLE) {
            pieces.add(Ui.text("This " + item.said() + ". An answer would be left out of the reckoning.", "note"));
        }
        pieces.add(Ui.column(4, Ui.text("How to look", "name"), Ui.text(question.look())));
        recorded(sitting, question).ifPresent(pieces::add);
        pieces.add(evidence(sitting));
        pieces.add(answers(question));
        pieces.add(unanswered(item));
        better().ifPresent(pieces::add);
        pieces.add(Ui.text(
                "Why it is asked: " + question.grounds().because() + " ("
                        + question.grounds().source() + ")",
                "muted"));
        return pieces;
    }

    private Node evidence(Sitting sitting) {
        FlowPane kinds = new FlowPane(8, 8);
        for (EvidenceKind kind : EvidenceKind.values()) {
            Button button =
                    Ui.keyButton(Spoken.evidence(kind), Keys.of(kind), () -> model.evidence(kind), "choice-small");
            button.setId("evidence-" + kind.id());
            button.setAccessibleRole(AccessibleRole.RADIO_BUTTON);
            mark(button, sitting.kind() == kind);
            kinds.getChildren().add(button);
        }
        return Ui.column(8, Ui.text("Whose evidence is the answer?", "name"), kinds);
    }

    private Node answers(Question question) {
        Optional<String> given = model.given().map(Report::answer);
        List<Button> buttons = new ArrayList<>();
        answers = buttons;
        for (Keys.AnswerKey answer : Keys.answers(question)) {
            Choice.Answer words = answer.answer();
            Button button = Ui.keyButton(words.label(), answer.key(), () -> model.answer(answer.id()), "choice");
            button.setId("answer-" + (buttons.size() + 1));
            button.setMaxWidth(Double.MAX_VALUE);
            mark(button, given.equals(Optional.of(answer.id())));
            buttons.add(button);
        }
        if (buttons.size() != 2) {
            return Ui.column(8, buttons);
        }
        HBox pair = Ui.row(16, buttons.toArray(Node[]::new));
        buttons.forEach(b -> {
            Ui.growing(b);
            b.setPrefWidth(200);
        });
        return pair;
    }

    private Node unanswered(Item item) {
        Button unsure = Ui.keyButton("Can't tell (looked)", "U", model::cantTell, "flat");
        unsure.setId("cant-tell");
        boolean open = item.standing() == Item.Standing.OPEN;
        Button leave = Ui.keyButton(open ? "Not checked, go on" : "Go on", "K", model::leave, "flat");
        leave.setId("not-checked");
        FlowPane both = new FlowPane(8, 8, unsure, leave);
        return both;
    }

    private Optional<Node> recorded(Sitting sitting, Question question) {
        List<Report> reports = model.answersTo(question.id());
        if (reports.isEmpty()) {
            return Optional.empty();
        }
        VBox list = Ui.column(4, Ui.text("Recorded", "name"));
        for (Report report : reports) {
            Label said = Ui.growing(Ui.text(Spoken.evidence(report.kind()) + ": "
                    + Spoken.answer(question, report.answer())
                    + (report.remark().isBlank() ? "" : " – " + report.remark())));
            boolean current = report.kind() == sitting.kind();
            Button back = current
                    ? Ui.keyButton("Take back", "Del", () -> model.takeBack(report.id()), "flat")
                    : Ui.button("Take back", () -> model.takeBack(report.id()), "flat");
            back.setMinWidth(USE_PREF_SIZE);
            back.setId("take-back-" + report.id());
            back.setAccessibleText("Take back: " + said.getText());
            list.getChildren().add(Ui.row(8, said, back));
        }
        return Optional.of(list);
    }

    private Optional<Node> better() {
        return model.better()
                .flatMap(q -> model.agenda().flatMap(a -> a.item(q)))
                .map(item -> {
                    Button go = Ui.keyButton(
                            "Would tell more now: " + item.question().label(),
                            "J",
                            () -> model.jump(item.question().id()),
                            "flat");
                    go.setId("better");
                    return go;
                });
    }

    /** Stands first: below a long question it would be out of sight. */
    private Node moving(Sitting sitting) {
        FlowPane row = new FlowPane(8, 8);
        if (!sitting.trail().isEmpty()) {
            Button back = Ui.keyButton("Back", "B", model::back, "flat");
            back.setId("back");
            row.getChildren().add(back);
        }
        Button all = Ui.keyButton("All questions", "/", allQuestions, "flat");
        all.setId("all-questions");
        row.getChildren().add(all);
        return row;
    }

    private List<Node> nothingLeft(WizardState state, Sitting sitting) {
        answers = List.of();
        List<Node> pieces = new ArrayList<>();
        boolean waiting =
                state.reckoning().running() && state.reckoning().latest().isEmpty();
        if (model.agenda().isEmpty() || waiting) {
            boolean trouble = state.reckoning().trouble().isPresent();
            pieces.add(Ui.text(trouble ? "This case cannot be shown" : "One moment", "question"));
            pieces.add(Ui.text(
                    trouble
                            ? "Case and rule book do not fit together; see above."
                            : "The first question is being chosen.",
                    "muted"));
            return pieces;
        }
        pieces.add(Ui.text("Nothing left to ask " + when(sitting.occasion()), "question"));
        pieces.add(Ui.text("Every question that can be answered now has an answer or was left unchecked.", "muted"));
        FlowPane ways = new FlowPane(8, 8);
        if (!sitting.setAside().isEmpty()) {
            ways.getChildren()
                    .add(named(
                            SHOWN + "-again",
                            Ui.button(
                                    "Ask again what was left unchecked ("
                                            + sitting.setAside().size() + ")",
                                    model::takeUpAgain)));
        }
        for (Occasion occasion : Occasion.values()) {
            if (occasion.ordinal() == sitting.occasion().ordinal() + 1) {
                ways.getChildren()
                        .add(named("go-on", Ui.button("Go on: " + occasion.label(), () -> model.occasion(occasion))));
            }
        }
        ways.getChildren().add(named("to-note", Ui.button("Parts and note", () -> model.show(Page.NOTE))));
        pieces.add(ways);
        pieces.add(moving(sitting));
        return pieces;
    }

    private static Button named(String id, Button button) {
        button.setId(id);
        return button;
    }

    private static String when(Occasion occasion) {
        return switch (occasion) {
            case BEFORE_BUYING -> "before buying";
            case ON_ARRIVAL -> "on arrival";
            case AT_THE_BENCH -> "at the bench";
        };
    }

    private static void mark(Button button, boolean chosen) {
        button.pseudoClassStateChanged(CHOSEN, chosen);
        if (chosen) {
            button.setAccessibleText(button.getAccessibleText() + ", chosen");
        }
    }
}
