package hingewise.planning;

import hingewise.costing.RepairCosts;
import hingewise.costing.Terms;
import hingewise.decision.Option;
import hingewise.decision.Planner;
import hingewise.decision.Policy;
import hingewise.decision.Prospect;
import hingewise.diagnosis.Diagnosis;
import hingewise.diagnosis.PossiblePhones;
import hingewise.rulebook.Access;
import hingewise.rulebook.Confirmation;
import hingewise.rulebook.Observation;
import hingewise.rulebook.RuleBook;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.IntStream;
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

    static final long PHONES = 1;
    static final long THROWS = 2;

    private final RepairCosts costs;
    private final Diagnosis diagnosis;
    private final CaseProblem problem;
    private final Why why;

    /** A case of which no price is known. */
    public Planning(RuleBook rules, RepairCosts costs, Diagnosis diagnosis) {
        this(rules, costs, diagnosis, Terms.UNKNOWN);
    }

    /** @param terms what the phone costs, so that not buying it and giving it back are weighed too */
    public Planning(RuleBook rules, RepairCosts costs, Diagnosis diagnosis, Terms terms) {
        this(rules, costs, diagnosis, terms, c -> true);
    }

    /**
     * @param terms what the phone costs, so that not buying it and giving it back are weighed too
     * @param allowed what may be done at all
     */
    public Planning(
            RuleBook rules, RepairCosts costs, Diagnosis diagnosis, Terms terms, Predicate<Confirmation> allowed) {
        this(rules, costs, diagnosis, terms, allowed, Concern.of(diagnosis));
    }

    /**
     * @param allowed what may be done at all
     * @param concern which causes count, where that is not to follow what is reported meanwhile
     */
    public Planning(
            RuleBook rules,
            RepairCosts costs,
            Diagnosis diagnosis,
            Terms terms,
            Predicate<Confirmation> allowed,
            Concern concern) {
        this.costs = costs;
        this.diagnosis = diagnosis;
        PossiblePhones phones = diagnosis.possiblePhones(Planner.WORLDS, PHONES);
        this.problem = new CaseProblem(
                rules,
                costs,
                diagnosis,
                phones,
                terms.bought() ? Moments.here(diagnosis) : Moments.of(diagnosis),
                terms,
                allowed,
                concern);
        this.why = new Why(rules, diagnosis, phones);
    }

    /** The plan. */
    public Plan plan() {
        Prospect prospect = prospect();
        Decision decision = decision(prospect);
        return new Plan(
                decision,
                costs.expected(prospect.stop()),
                costs.expected(prospect.plan()),
                costs.expected(prospect.known()),
                costs.expected(prospect.error()),
                worthIt(prospect).size(),
                ids(asking().needs(decision)),
                steps(prospect));
    }

    Asking asking() {
        return problem.asking();
    }

    private static List<String> ids(List<Sheet.Need> needs) {
        return needs.stream().map(n -> n.observation().id()).toList();
    }

    /**
     * The plan as a sheet to work by, to the end of every branch that is likely enough. It begins with the plan's first
     * step.
     */
    public Sheet sheet() {
        return sheet(Sheet.LEAST_CHANCE);
    }

    /** @param least chance of a branch that is drawn */
    public Sheet sheet(double least) {
        Policy policy = Planner.policy(problem.problem(), problem.worlds(), 0, THROWS, least);
        return SheetMaker.sheet(problem, costs, this::ending, Planner.WORLDS, policy);
    }

    /** What must be answered before all that a sheet opens, by its stations or at its ends, and is not. */
    public List<Sheet.Need> beforeOpening(Sheet sheet) {
        return Stream.concat(
                        sheet.stations().stream().flatMap(s -> asking().needs(s.opens()).stream()),
                        sheet.ends().stream().flatMap(e -> asking().needs(e.decision()).stream()))
                .distinct()
                .toList();
    }

    /** The quickest check that answers this, opens nothing, harms nothing and can be done now; empty if there is none. */
    public Optional<Confirmation> check(Observation observation) {
        return asking().checks(observation, problem.moments().now())
                .min(Comparator.comparingDouble(Confirmation::minutes).thenComparing(Confirmation::id));
    }

    /** The beginning of the plan alone, which takes less time. */
    public Next next() {
        Prospect prospect = prospect();
        return new Next(
                prospect.goesOn()
                        ? Optional.of(
                                problem.confirmation(prospect.options().get(0).act()))
                        : Optional.empty(),
                alone(prospect.options()),
                decision(prospect));
    }

    /** The act that saves most by itself, its cost taken off. */
    private Optional<Confirmation> alone(List<Option> options) {
        return options.stream()
                .filter(o -> o.with() == Option.ALONE && o.net() > 0)
                .max(Comparator.comparingDouble(Option::net).thenComparing(Option::act, Comparator.reverseOrder()))
                .map(o -> problem.confirmation(o.act()));
    }

    private Prospect prospect() {
        return Planner.prospect(problem.problem(), problem.worlds(), 0, THROWS);
    }

    /**
     * How a plan begins.
     *
     * @param step what to do first; empty if nothing is worth doing before deciding
     * @param nearest what would be done first if nobody looked further than one step; empty for nothing
     * @param decision what to decide now
     */
    public record Next(Optional<Confirmation> step, Optional<Confirmation> nearest, Decision decision) {}

    private Decision decision(Prospect prospect) {
        return problem.moments().listing() && prospect.goesOn()
                ? new Decision(Decision.Kind.ASK_FIRST, List.of(), Set.of())
                : ending(prospect.ending(), Map.of());
    }

    /**
     * What an ending comes to now: before anybody here has looked nothing but buying can be decided.
     *
     * @param seen what was seen until then beside what is recorded, by id
     */
    private Decision ending(int ending, Map<String, Boolean> seen) {
        Decision decision = problem.decision(ending);
        return problem.moments().listing() && decision.kind() != Decision.Kind.PASS
                ? new Decision(Decision.Kind.OFFER, List.of(), Set.of())
                : decision.tested(asking().testable(seen));
    }

    /**
     * The first step of the plan, those that are worth their cost, and then those that tell most of what may be paid for,
     * minute for minute: a decision may be clear and one may still want to be surer.
     */
    private List<Step> steps(Prospect prospect) {
        List<Option> worthIt = worthIt(prospect);
        Stream<Option> telling = prospect.options().stream()
                .filter(o -> !worthIt.contains(o) && o.told() >= LEAST_TOLD)
                .sorted(Comparator.comparingDouble(o -> -o.told() / (problem.minutes(o.act()) + TURNING_TO_IT)))
                .limit(Math.max(0, FEWEST - worthIt.size()));
        return Stream.concat(worthIt.stream(), telling).map(this::step).toList();
    }

    /** Where going on is not worth it, what a single step seems to save is chance. */
    private static List<Option> worthIt(Prospect prospect) {
        List<Option> options = prospect.options();
        return IntStream.range(0, prospect.goesOn() ? options.size() : 0)
                .filter(i -> i == 0 || options.get(i).net() > 0)
                .mapToObj(options::get)
                .toList();
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
                asking().needs(c),
                costs.expected(option.gross()),
                costs.expected(option.net()),
                option.with() == Option.ALONE ? Optional.empty() : Optional.of(problem.confirmation(option.with())),
                why.of(c, problem.looks(c), problem.counted(), problem.moments().kind(c)));
    }
}
