package hingewise.terminal;

import hingewise.assessment.Assessment;
import hingewise.casefile.Report;
import hingewise.costing.HeldPart;
import hingewise.costing.Offer;
import hingewise.costing.OrderLine;
import hingewise.rulebook.EvidenceKind;
import hingewise.rulebook.Grade;
import hingewise.rulebook.RuleBook;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.joda.money.Money;

/** What to order. */
final class PartsSection {
    private PartsSection() {}

    static void write(Page page, RuleBook rules, Assessment assessment, boolean invented) {
        page.heading(isHere(assessment) ? "Parts to order" : "Parts it would need");
        List<OrderLine> parts = assessment.parts().order();
        if (parts.isEmpty()) {
            page.line(
                    assessment.stopped()
                            ? "None while work stops."
                            : assessment.parts().held().isEmpty()
                                    ? "None yet: nothing that a part renews is sure enough to be broken."
                                    : "None yet.");
        }
        for (OrderLine line : parts) {
            page.hanging(
                    0,
                    line.quantity() + " x  ",
                    line.part().label() + " (" + line.part().id() + ")"
                            + line.offer().map(o -> offer(rules, o)).orElse(", no offer in the price book"));
            page.hanging(5, "for  ", purpose(rules, line));
        }
        long unpriced = parts.stream().filter(l -> l.offer().isEmpty()).count();
        String known = unpriced == 0 ? "." : ", not counting what has no offer.";
        total(parts).ifPresent(sum -> page.line("Together " + Figures.money(sum) + known));
        for (HeldPart held : assessment.parts().held()) {
            page.hanging(
                    0,
                    "wait ",
                    "Do not order for \"" + label(rules, held) + "\" "
                            + held.until()
                                    .map(u -> "before \"" + u.label() + "\": it may make the order needless.")
                                    .orElse("(" + Figures.percent(held.chance()) + ") before it is surer."));
        }
        if (invented && !parts.isEmpty()) {
            page.faint(0, "Prices are from the bundled demo price book: invented. Use your own with --prices FILE.");
        }
    }

    /** Before anybody here has looked at the phone nothing is to be ordered. */
    private static boolean isHere(Assessment assessment) {
        return assessment.file().standing().stream()
                .anyMatch(e ->
                        e instanceof Report r && (r.kind() == EvidenceKind.LOOK || r.kind() == EvidenceKind.METER));
    }

    private static String label(RuleBook rules, HeldPart held) {
        return rules.causes().values().stream()
                .filter(c -> held.causes().contains(c.id()))
                .map(c -> c.label())
                .collect(Collectors.joining("; "));
    }

    private static String offer(RuleBook rules, Offer offer) {
        Grade grade = rules.grades().get(offer.grade());
        return ", " + Figures.money(offer.price()) + " each from " + offer.supplier() + " ("
                + (grade == null ? offer.grade() : grade.label()) + ", "
                + Figures.count(offer.days(), "day") + ")";
    }

    private static String purpose(RuleBook rules, OrderLine line) {
        return line.causes().isEmpty()
                ? "the other parts' fitting"
                : rules.causes().values().stream()
                        .filter(c -> line.causes().contains(c.id()))
                        .map(c -> c.label())
                        .collect(Collectors.joining("; "));
    }

    private static Optional<Money> total(List<OrderLine> parts) {
        return parts.stream()
                .flatMap(l -> l.offer().map(o -> o.price().multipliedBy(l.quantity())).stream())
                .reduce(Money::plus);
    }
}
