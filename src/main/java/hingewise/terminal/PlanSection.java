package hingewise.terminal;

import hingewise.planning.Decision;
import hingewise.planning.Plan;
import hingewise.planning.Step;
import hingewise.rulebook.Part;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** The plan that looks ahead: what to decide, what going on is expected to cost, and how much could still be saved. */
final class PlanSection {
    private static final int TOLD = 5;

    private PlanSection() {}

    static void write(Page page, Plan plan) {
        page.heading("Looking ahead");
        page.line("Deciding now: " + decision(plan.decision()) + ". Expected to cost " + Figures.money(plan.now())
                + " from here on (standard error " + Figures.money(plan.error()) + ").");
        page.line("Going on as well as was found: " + Figures.money(plan.expected()) + ". If everything were known: "
                + Figures.money(plan.knowing()) + ". At most " + Figures.money(plan.atMost())
                + " could still be saved by knowing everything.");
        if (!plan.goesOn()) {
            page.line("Nothing is worth doing first.");
        }
        List<Step> steps = plan.steps();
        for (int i = 0; i < Math.min(TOLD, steps.size()); i++) {
            Step step = steps.get(i);
            page.hanging(0, (i + 1) + ".  ", step.confirmation().label() + together(step), Optional.of(Tint.HEADING));
            page.hanging(
                    4, "", Figures.minutes(step.minutes()) + ", net " + Figures.money(step.net()) + ". " + step.why());
        }
        page.faint(
                0,
                "Estimated from phones drawn from what is known; apart from the list above, which looks one step ahead.");
    }

    private static String together(Step step) {
        return step.together().map(c -> ", together with: " + c.label()).orElse("");
    }

    private static String decision(Decision decision) {
        return switch (decision.kind()) {
            case ASK_FIRST -> "ask first";
            case OFFER -> "offer or pass";
            case REPAIR -> "fit " + decision.parts().stream().map(Part::label).collect(Collectors.joining(", "));
            case LEAVE -> "order nothing";
            case SERVICE -> "send it to the maker's repair";
            case AS_IS -> "sell it as it is, its faults stated";
            case BREAK -> "break it for parts";
        };
    }
}
