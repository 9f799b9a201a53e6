package hingewise.terminal;

import hingewise.assessment.Assessment;
import hingewise.casefile.Report;
import hingewise.costing.HeldPart;
import hingewise.costing.Offer;
import hingewise.costing.OrderLine;
import hingewise.costing.PartsList;
import hingewise.costing.Purchase;
import hingewise.costing.Regret;
import hingewise.rulebook.Component;
import hingewise.rulebook.EvidenceKind;
import hingewise.rulebook.Grade;
import hingewise.rulebook.RuleBook;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.joda.money.Money;

/** What to order. */
final class PartsSection {
    private PartsSection() {}

    static void write(Page page, RuleBook rules, Assessment assessment, boolean invented) {
        boolean elsewhere = assessment.plan().elsewhere() && !assessment.stopped();
        page.heading(isHere(assessment) && !elsewhere ? "Parts to order" : "Parts it would need");
        List<OrderLine> parts = assessment.parts().order();
        if (elsewhere && !parts.isEmpty()) {
            page.line("Order none of them as long as it stands: "
                    + assessment.plan().decision().order() + ". A repair here would need");
        }
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
        String known = unpriced == 0 ? "" : ", not counting what has no offer";
        assessment
                .parts()
                .purchase()
                .filter(p -> p.goods().isPositive())
                .ifPresent(p -> page.line("Together " + Figures.money(p.goods()) + known
                        + (p.sending().isZero() ? "" : ", and " + Figures.money(p.sending()) + " for sending")
                        + "; complete in " + Figures.count(p.days(), "day") + "."));
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

    /** What the order costs beside, how sure each line is, and how else it could be bought. */
    static void reckoned(Page page, RuleBook rules, PartsList parts) {
        parts.purchase().ifPresent(p -> {
            page.heading("What that costs");
            page.line("Work " + Figures.money(p.work()) + "; bad parts, on average " + Figures.money(p.risk())
                    + "; less for the phone because of the parts' origin " + Figures.money(p.lessResale())
                    + "; waiting " + Figures.money(p.waiting()) + ". All together " + Figures.money(p.total()) + ".");
        });
        parts.runnerUp()
                .ifPresent(other -> parts.purchase()
                        .ifPresent(p -> page.line("Next best: " + others(p, other) + ". " + difference(p, other))));
        if (parts.order().isEmpty() && parts.held().isEmpty()) {
            return;
        }
        page.heading("What may be lost");
        page.line("By ordering now, and by waiting: each times the chance that it would have been wrong.");
        for (OrderLine line : parts.order()) {
            regret(
                    page,
                    line.regret(),
                    (line.sure() ? "sure" : "likely") + " (" + Figures.percent(line.chance()) + "): "
                            + line.part().label());
        }
        for (HeldPart held : parts.held()) {
            regret(page, held.regret(), "wait (" + Figures.percent(held.chance()) + "): " + component(rules, held));
        }
    }

    private static String component(RuleBook rules, HeldPart held) {
        Component component = rules.components().get(held.component());
        return component == null ? held.component() : component.label();
    }

    private static void regret(Page page, Regret regret, String what) {
        page.hanging(
                0,
                String.format(
                        Locale.ROOT,
                        "%9s %9s  ",
                        regret.ordering().getAmount().toPlainString(),
                        regret.waiting().getAmount().toPlainString()),
                what);
    }

    /** The offers that the other way takes and this one does not. */
    private static String others(Purchase chosen, Purchase other) {
        return other.lines().stream()
                .filter(l -> !chosen.lines().contains(l))
                .map(l -> l.part().label()
                        + l.offer()
                                .map(o -> " from " + o.supplier() + " at " + Figures.money(o.price()))
                                .orElse(", which nobody sells"))
                .collect(Collectors.joining("; "));
    }

    private static String difference(Purchase chosen, Purchase other) {
        Money more = other.paid().minus(chosen.paid());
        int sooner = chosen.days() - other.days();
        String money = more.isZero()
                ? "It costs as much"
                : "It would " + (more.isPositive() ? "cost " : "save ") + Figures.money(more.abs())
                        + (more.isPositive() ? " more" : "");
        String days = sooner == 0
                ? ""
                : " and be complete " + Figures.count(Math.abs(sooner), "day") + (sooner > 0 ? " sooner" : " later");
        return money + days + ".";
    }
}
