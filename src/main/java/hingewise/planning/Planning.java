package hingewise.planning;

import hingewise.costing.RepairCosts;
import hingewise.decision.Option;
import hingewise.decision.Planner;
import hingewise.decision.Prospect;
import hingewise.diagnosis.Diagnosis;
import hingewise.rulebook.Access;
import hingewise.rulebook.Confirmation;
import hingewise.rulebook.RuleBook;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.joda.money.Money;

/**
 * Plans a case: what to confirm or try first, and what to decide where nothing is worth doing. The same case gets the same
 * plan.
 */
public final class Planning {
    /** Where fewer steps are worth their cost, those that tell most are added up to as many. */
    private static final int FEWEST = 3;
    /** Least money at stake, in the shop's currency times bits, of which a step must tell to be added. */
    private static final double LEAST_TOLD = .2;
    /** Minutes that looking at anything takes beside its own. */
    private static final double TURNING_TO_IT = 3;

    private static final long PHONES = 1;
    private static final long THROWS = 2;

    private final RepairCosts costs;
    private final Diagnosis diagnosis;
    private final CaseProblem problem;
    private final Why why;

    public Planning(RuleBook rules, RepairCosts costs, Diagnosis diagnosis) {
        this.costs = costs;
        this.diagnosis = diagnosis;
        this.problem = new CaseProblem(rules, costs, diagnosis, diagnosis.possiblePhones(Planner.WORLDS, PHONES));
        this.why = new Why(rules, diagnosis);
    }

    /** The plan. */
    public Plan plan() {
        Prospect prospect = Planner.prospect(problem.problem(), problem.worlds(), 0, THROWS);
        return new Plan(
                decision(prospect),
                costs.expected(prospect.stop()),
                costs.expected(prospect.plan()),
                costs.expected(prospect.known()),
                costs.expected(prospect.error()),
                prospect.goesOn(),
                steps(prospect));
    }

    private Decision decision(Prospect prospect) {
        if (problem.moments().listing()) {
            Decision.Kind kind = prospect.goesOn() ? Decision.Kind.ASK_FIRST : Decision.Kind.OFFER;
            return new Decision(kind, List.of(), Set.of());
        }
        return problem.repair(prospect.ending())
                .map(r -> new Decision(
                        Decision.Kind.REPAIR,
                        List.copyOf(r.parts()),
                        r.causes().stream()
                                .filter(c -> diagnosis.chanceOf(c) >= .5)
                                .collect(Collectors.toSet())))
                .orElse(new Decision(Decision.Kind.LEAVE, List.of(), Set.of()));
    }

    /**
     * The first step of the plan, those that are worth their cost, and then those that tell most of what may be paid for,
     * minute for minute: a decision may be clear and one may still want to be surer.
     */
    private List<Step> steps(Prospect prospect) {
        List<Option> options = new ArrayList<>(prospect.options());
        List<Option> worthIt = new ArrayList<>();
        if (prospect.goesOn()) {
            worthIt.add(options.remove(0));
        }
        options.stream().filter(o -> o.net() > 0).forEach(worthIt::add);
        Stream<Option> telling = options.stream()
                .filter(o -> o.net() <= 0 && o.told() >= LEAST_TOLD)
                .sorted(Comparator.comparingDouble(o -> -o.told() / (problem.minutes(o.act()) + TURNING_TO_IT)))
                .limit(Math.max(0, FEWEST - worthIt.size()));
        return Stream.concat(worthIt.stream(), telling).map(this::step).toList();
    }

    private Step step(Option option) {
        Confirmation c = problem.confirmation(option.act());
        List<Access> path = costs.stepsTo(c.access(), diagnosis.readings().open());
        Money cost = path.stream().map(Access::cost).map(costs::money).reduce(costs.money(c.cost()), Money::plus);
        return new Step(
                c,
                problem.minutes(option.act()),
                cost,
                path.stream().map(Access::id).toList(),
                problem.askFirst(c),
                costs.expected(option.gross()),
                costs.expected(option.net()),
                option.with() == Option.ALONE ? Optional.empty() : Optional.of(problem.confirmation(option.with())),
                why.of(c, problem.looks(c), problem.counted(), problem.moments().kind(c)));
    }
}
