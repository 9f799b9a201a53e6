package hingewise.terminal;

import hingewise.assessment.Assessment;
import hingewise.planning.Plan;
import hingewise.planning.Sheet;
import hingewise.planning.Step;
import hingewise.rulebook.Access;
import hingewise.rulebook.Observation;
import hingewise.rulebook.RuleBook;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** What to ask, check or try, best first. */
final class StepSection {
    private static final int TOLD = 5;

    private StepSection() {}

    /** The steps that are told in full. */
    static List<Step> told(Assessment assessment) {
        return assessment.tryFirst().stream().limit(TOLD).toList();
    }

    static void write(Page page, RuleBook rules, Assessment assessment, Care care) {
        page.heading("What to try first");
        Plan plan = assessment.plan();
        List<Step> steps = plan.steps();
        if (!assessment.stopped()) {
            page.line("At most " + Figures.money(plan.atMost()) + " could still be saved by knowing everything.");
        }
        if (!plan.goesOn()) {
            page.line(
                    assessment.stopped()
                            ? steps.isEmpty()
                                    ? "Nothing while work stops, and no question is worth asking."
                                    : "Nothing while work stops but to ask, if you want to be surer:"
                            : (plan.decision().ofOffer()
                                            ? "Nothing is worth asking any more: "
                                            : "Nothing is worth its minutes and money any more: ")
                                    + plan.decision().order() + "."
                                    + (steps.isEmpty() ? "" : " To be surer of the causes all the same:"));
        } else {
            page.faint(
                    0,
                    "What each is expected to save against " + plan.decision().now()
                            + ", and net of its minutes, material and risk; the"
                            + " first is where the plan that looks ahead begins.");
        }
        if (!assessment.stopped()) {
            plan.decision().reckonedAgainst().ifPresent(against -> page.faint(0, against));
            if (!plan.goesOn() && !plan.askFirst().isEmpty()) {
                page.line("Before it is opened for that, answer first: "
                        + labels(plan.askFirst(), id -> rules.observations().get(id), Observation::question, " ")
                        + " Open it only if the answer allows it.");
            }
        }
        for (int i = 0; i < Math.min(TOLD, steps.size()); i++) {
            if (i > 0 && i == plan.worth()) {
                page.line("Nothing more changes what to " + (plan.decision().ofOffer() ? "offer" : "decide")
                        + ". To be surer of the causes all the same:");
            }
            tell(page, rules, plan.decision().ofOffer(), i + 1, steps.get(i), care);
        }
        List<Step> worthIt = plan.worthDoing().stream().skip(TOLD).toList();
        if (!worthIt.isEmpty()) {
            page.faint(
                    0,
                    "Also worth it, less so: "
                            + worthIt.stream()
                                    .limit(TOLD)
                                    .map(s -> s.confirmation().label())
                                    .collect(Collectors.joining("; "))
                            + (worthIt.size() > TOLD ? "; and " + (worthIt.size() - TOLD) + " more" : "") + ".");
        }
    }

    private static void tell(Page page, RuleBook rules, boolean listed, int number, Step step, Care care) {
        String first = "first  ";
        String cost = step.cost().isZero() ? "no material" : Figures.money(step.cost());
        page.hanging(0, number + ".  ", step.confirmation().label(), Optional.of(Tint.HEADING));
        for (Sheet.Need need : step.needs()) {
            page.hanging(4, first, need.observation().question() + " Only if " + (need.answer() ? "yes." : "no."));
            first = " ".repeat(first.length());
        }
        page.hanging(
                4,
                "",
                step.confirmation().kind().id() + " " + step.confirmation().id() + ", "
                        + Figures.minutes(step.minutes()) + ", " + cost + "; " + saving(step));
        if (listed) {
            page.hanging(4, "who    ", Step.before(step.confirmation()));
        } else {
            page.hanging(
                    4,
                    "open   ",
                    step.opens().isEmpty()
                            ? "nothing"
                            : labels(step.opens(), id -> rules.access().get(id), Access::label, ", then "));
        }
        care.atStep(page, number);
        page.hanging(4, "do     ", step.confirmation().how());
        page.hanging(4, "why    ", step.why());
        page.blank();
    }

    private static String saving(Step step) {
        return step.together()
                .map(c -> "together with \"" + c.label() + "\" net " + Figures.money(step.net()))
                .orElse(
                        step.saves().isPositive()
                                ? "saves " + Figures.money(step.saves()) + ", net " + Figures.money(step.net())
                                : "changes no decision by itself");
    }

    private static <T> String labels(
            List<String> ids, Function<String, T> find, Function<T, String> label, String between) {
        return ids.stream()
                .map(id -> Optional.ofNullable(find.apply(id)).map(label).orElse(id))
                .collect(Collectors.joining(between));
    }
}
