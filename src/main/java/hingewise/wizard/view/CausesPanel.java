package hingewise.wizard.view;

import hingewise.assessment.Assessment;
import hingewise.casefile.CaseFile;
import hingewise.casefile.Report;
import hingewise.diagnosis.RankedCause;
import hingewise.diagnosis.Reason;
import hingewise.wizard.model.WizardModel;
import hingewise.wizard.model.WizardState;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/** The likely causes as bars with words; opened, each with what speaks for it and against it. */
final class CausesPanel extends VBox {
    private static final int SHOWN = 5;
    /** Reasons a side, the weightiest first. */
    private static final int REASONS = 4;
    /** A change of the log-odds that no person would notice. */
    private static final double NOTICEABLE = .005;

    private final WizardModel model;
    private final Set<String> opened = new HashSet<>();
    private Optional<Assessment> drawn = Optional.empty();
    private boolean all;

    CausesPanel(WizardModel model) {
        super(8);
        this.model = model;
        setId("causes");
        getStyleClass().add("panel");
        draw();
    }

    void show(WizardState state) {
        if (state.reckoning().latest().equals(drawn)) {
            return;
        }
        drawn = state.reckoning().latest();
        draw();
    }

    private void draw() {
        List<Node> pieces = new ArrayList<>();
        pieces.add(Ui.heading("Likely causes"));
        drawn.ifPresentOrElse(
                assessment -> {
                    List<RankedCause> causes = assessment.diagnosis().causes();
                    causes.stream()
                            .limit(all ? causes.size() : SHOWN)
                            .forEach(c -> pieces.add(cause(c, assessment.file())));
                    if (causes.size() > SHOWN) {
                        pieces.add(more(causes.size()));
                    }
                },
                () -> pieces.add(Ui.text("They show as soon as the case has been reckoned.", "muted")));
        Focus.keeping(this, () -> getChildren().setAll(pieces));
    }

    private Node more(int count) {
        Button more = Ui.button(
                all ? "Show fewer causes" : "Show all " + count + " causes",
                () -> {
                    all = !all;
                    draw();
                },
                "flat");
        more.setId("causes-more");
        return more;
    }

    private Node cause(RankedCause ranked, CaseFile file) {
        String id = ranked.cause().id();
        boolean open = opened.contains(id);
        Label name = Ui.growing(Ui.text(ranked.cause().label(), "name"));
        Label chance = Ui.line(Figures.percent(ranked.probability()), "figure");
        Label words = Ui.line(ranked.words(), "muted", "chance-words");
        Button head = Ui.opener(
                "cause-" + id,
                Ui.column(4, Ui.topRow(8, name, chance), Ui.row(8, Ui.growing(new Bar(ranked.probability())), words)),
                ranked.cause().label() + ", " + ranked.words() + ", " + Figures.percent(ranked.probability())
                        + (open ? ", reasons shown" : ", show reasons"),
                () -> {
                    if (!opened.remove(id)) {
                        opened.add(id);
                    }
                    draw();
                });
        head.setAccessibleRole(AccessibleRole.TOGGLE_BUTTON);
        return open ? Ui.column(0, head, reasons(ranked, file)) : head;
    }

    private Node reasons(RankedCause ranked, CaseFile file) {
        VBox box = Ui.column(4, Ui.text(ranked.cause().grounds().because(), "muted"));
        box.getStyleClass().add("details");
        side(box, "Speaks for it", ranked, file, r -> r.weight() >= NOTICEABLE);
        side(box, "Speaks against it", ranked, file, r -> r.weight() <= -NOTICEABLE);
        if (ranked.reasons().stream().noneMatch(r -> Math.abs(r.weight()) >= NOTICEABLE)) {
            box.getChildren().add(Ui.text("No answer so far moves it; this is how common it is.", "muted"));
        }
        return box;
    }

    private void side(VBox box, String title, RankedCause ranked, CaseFile file, Predicate<Reason> which) {
        List<Reason> reasons = ranked.reasons().stream()
                .filter(which)
                .sorted((a, b) -> Double.compare(Math.abs(b.weight()), Math.abs(a.weight())))
                .toList();
        if (reasons.isEmpty()) {
            return;
        }
        box.getChildren().add(Ui.text(title, "name"));
        reasons.stream().limit(REASONS).forEach(r -> box.getChildren().add(reason(r, ranked, file)));
        if (reasons.size() > REASONS) {
            box.getChildren().add(Ui.text("and " + (reasons.size() - REASONS) + " smaller", "muted"));
        }
    }

    private Node reason(Reason reason, RankedCause ranked, CaseFile file) {
        String without = Figures.percent(reason.without()) + " without this entry";
        return Ui.opener(
                "reason-" + ranked.cause().id() + "-" + reason.entry(),
                Ui.column(0, Ui.text(reason.text()), Ui.text(without, "muted")),
                reason.text() + " " + without + ". Go to this answer",
                () -> question(file, reason.entry()).ifPresent(model::jump));
    }

    private static Optional<String> question(CaseFile file, String entry) {
        return file.entries().stream()
                .filter(e -> e.id().equals(entry) && e instanceof Report)
                .map(e -> ((Report) e).about())
                .findFirst();
    }
}
