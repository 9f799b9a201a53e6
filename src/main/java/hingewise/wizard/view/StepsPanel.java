package hingewise.wizard.view;

import hingewise.assessment.Assessment;
import hingewise.assessment.CareOrder;
import hingewise.assessment.Cautions;
import hingewise.planning.Decision;
import hingewise.planning.Plan;
import hingewise.planning.Step;
import hingewise.rulebook.Caution;
import hingewise.wizard.model.WizardModel;
import hingewise.wizard.model.WizardState;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/** What to confirm or try first, with minutes, money, what must be open, and why. */
final class StepsPanel extends VBox {
    private static final int SHOWN = 3;

    private final WizardModel model;
    private final Set<String> opened = new HashSet<>();
    private final Map<String, TryForm> forms = new HashMap<>();
    private Optional<Assessment> drawn = Optional.empty();
    private boolean all;

    StepsPanel(WizardModel model) {
        super(8);
        this.model = model;
        setId("steps");
        getStyleClass().add("panel");
        draw();
    }

    void show(WizardState state) {
        if (state.reckoning().latest().equals(drawn)) {
            return;
        }
        drawn = state.reckoning().latest();
        // A form says what has to be opened for it, which may have changed.
        forms.clear();
        draw();
    }

    private void draw() {
        List<Node> pieces = new ArrayList<>();
        pieces.add(Ui.heading("Try first"));
        if (drawn.isEmpty()) {
            pieces.add(Ui.text("What is worth doing shows as soon as the case has been reckoned.", "muted"));
        } else {
            steps(drawn.get(), pieces);
        }
        Focus.keeping(this, () -> getChildren().setAll(pieces));
    }

    private void steps(Assessment assessment, List<Node> pieces) {
        Plan plan = assessment.plan();
        List<Step> steps = plan.steps();
        if (!assessment.stopped()) {
            pieces.add(Ui.text(
                    "At most " + Figures.money(plan.atMost()) + " could still be saved by knowing everything.",
                    "muted"));
        }
        if (!plan.goesOn()) {
            pieces.add(Ui.text(
                    assessment.stopped()
                            ? steps.isEmpty()
                                    ? "Nothing: a caution stops the work."
                                    : "Only questions: a caution stops the work."
                            : (plan.decision().ofOffer()
                                            ? "Nothing is worth asking any more: "
                                            : "Nothing is worth its minutes and money any more: ")
                                    + plan.decision().order() + "."
                                    + (steps.isEmpty() ? "" : " To be surer all the same:"),
                    "muted"));
        }
        if (!assessment.stopped()) {
            plan.decision().reckonedAgainst().ifPresent(against -> pieces.add(Ui.text(against, "muted")));
            if (!plan.goesOn()) {
                model.rules()
                        .ifPresent(rules -> plan.askFirst().stream()
                                .flatMap(o -> rules.question(o).stream())
                                .forEach(q -> pieces.add(Ui.button(
                                        "Ask before opening it: " + q.label(), () -> model.jump(q.id()), "flat"))));
            }
        }
        CareOrder order = new CareOrder();
        for (int i = 0; i < (all ? steps.size() : Math.min(SHOWN, steps.size())); i++) {
            if (i > 0 && i == plan.worth()) {
                pieces.add(Ui.text(
                        "Nothing more changes what to " + (plan.decision().ofOffer() ? "offer" : "decide")
                                + ". To be surer all the same:",
                        "muted"));
            }
            pieces.add(step(i + 1, steps.get(i), plan.decision(), order));
        }
        if (steps.size() > SHOWN) {
            Button more = Ui.button(
                    all ? "Show fewer steps" : "Show all " + steps.size() + " steps",
                    () -> {
                        all = !all;
                        draw();
                    },
                    "flat");
            more.setId("steps-more");
            pieces.add(more);
        }
    }

    /** @param order of the cautions of what is shown in full so far */
    private Node step(int rank, Step step, Decision decision, CareOrder order) {
        String id = step.confirmation().id();
        boolean open = opened.contains(id);
        Label name = Ui.growing(Ui.text(step.confirmation().label(), "name"));
        String opens = decision.ofOffer()
                ? Step.before(step.confirmation())
                : step.opens().isEmpty()
                        ? "phone stays closed"
                        : "opens " + step.opens().stream().map(this::access).collect(Collectors.joining(", "));
        Label what = Ui.growing(Ui.text(Spoken.kind(step.confirmation().kind()) + " · " + opens, "muted"));
        VBox figures = Ui.column(
                4, Ui.line(Figures.minutes(step.minutes()), "figure"), Ui.line(Figures.money(step.cost()), "figure"));
        figures.getStyleClass().add("figures");
        figures.setMinWidth(USE_PREF_SIZE);
        List<Caution> cautions = cautions(step);
        VBox words = Ui.column(4, name, what);
        if (!cautions.isEmpty()) {
            words.getChildren().add(Ui.row(8, Ui.mark(Marks.CAUTION, "mark-warning"), Ui.text(counted(cautions))));
        }
        Button head = Ui.opener(
                "step-" + id,
                Ui.topRow(8, Ui.line(Integer.toString(rank), "rank"), Ui.growing(words), figures),
                rank + ": " + step.confirmation().label() + ", " + Figures.minutes(step.minutes()) + ", "
                        + Figures.money(step.cost()) + ", " + opens
                        + (cautions.isEmpty() ? "" : ", " + counted(cautions))
                        + (open ? ", details shown" : ", show details"),
                () -> {
                    if (!opened.remove(id)) {
                        opened.add(id);
                    }
                    draw();
                });
        head.setAccessibleRole(AccessibleRole.TOGGLE_BUTTON);
        return open ? Ui.column(0, head, details(step, decision.now(), order.at(cautions))) : head;
    }

    private Node details(Step step, String instead, CareOrder.Care care) {
        VBox box = Ui.column(8);
        model.rules().ifPresent(rules -> {
            step.askFirst().stream()
                    .flatMap(o -> rules.question(o).stream())
                    .forEach(q -> box.getChildren()
                            .add(Ui.button("Ask before: " + q.label(), () -> model.jump(q.id()), "flat")));
        });
        if (!care.here().isEmpty() || !care.again().isEmpty()) {
            box.getChildren().add(Ui.care(care));
        }
        box.getChildren()
                .addAll(
                        Ui.text(step.confirmation().how()),
                        Ui.text(step.why()),
                        Ui.text(saving(step, instead), "muted"));
        box.getStyleClass().add("details");
        box.getChildren().add(done(step));
        return box;
    }

    /** @param instead what it is held against */
    private static String saving(Step step, String instead) {
        return step.together()
                .map(c -> "Worth it together with \"" + c.label() + "\": " + Figures.money(step.net())
                        + " after minutes, cost and risk of both.")
                .orElse("Expected to save " + Figures.money(step.saves()) + " against " + instead + "; "
                        + Figures.money(step.net()) + " after its minutes, its cost and its risk.");
    }

    /** The way to record that a step was done; the form keeps what was chosen in it while the list is drawn anew. */
    private Node done(Step step) {
        String id = step.confirmation().id();
        TryForm form = forms.get(id);
        if (form != null) {
            return form;
        }
        return Bands.button("done-" + id, "Done – record it …", () -> {
            forms.put(id, new TryForm(model.recorder(), step.confirmation(), () -> {
                forms.remove(id);
                draw();
            }));
            draw();
            forms.get(id).focusFirst();
        });
    }

    private List<Caution> cautions(Step step) {
        return model.rules().map(r -> Cautions.of(r, step)).orElse(List.of());
    }

    private static String counted(List<Caution> cautions) {
        return cautions.size() + (cautions.size() == 1 ? " caution" : " cautions");
    }

    private String access(String id) {
        return model.rules()
                .flatMap(r -> Optional.ofNullable(r.access().get(id)))
                .map(a -> a.label().toLowerCase(java.util.Locale.ROOT))
                .orElse(id);
    }
}
