package hingewise.terminal;

import hingewise.planning.Plan;
import java.util.Locale;

/** The plan that looks ahead: what to decide, what going on is expected to cost, and how much could still be saved. */
final class PlanSection {
    private PlanSection() {}

    static void write(Page page, Plan plan) {
        page.heading("Looking ahead");
        page.line(now(plan) + " expected to cost " + Figures.money(plan.now()) + " from here on (standard error "
                + Figures.money(plan.error()) + ").");
        page.line("Going on as well as was found: " + Figures.money(plan.expected()) + ". If everything were known: "
                + Figures.money(plan.knowing()) + ". At most " + Figures.money(plan.atMost())
                + " could still be saved by knowing everything.");
        plan.decision().reckonedAgainst().ifPresent(page::line);
        double gap = plan.expected().minus(plan.knowing()).getAmount().doubleValue();
        page.line("So the plan is at most " + Figures.money(plan.expected().minus(plan.knowing()))
                + " above the least that anything can be expected to cost"
                + (plan.expected().isPositive()
                        ? String.format(
                                Locale.ROOT,
                                ", %.0f %% of it",
                                100 * gap / plan.expected().getAmount().doubleValue())
                        : "")
                + ".");
        page.faint(0, "Estimated from phones drawn from what is known, always the same for the same case.");
    }

    private static String now(Plan plan) {
        return switch (plan.decision().kind()) {
            case ASK_FIRST, OFFER -> "Offering or passing now is";
            case PASS -> "To " + plan.decision().order() + ", is";
            case REPAIR, LEAVE, SERVICE, AS_IS, BREAK, RETURN ->
                "Deciding now: " + plan.decision().order() + ". This is";
        };
    }
}
