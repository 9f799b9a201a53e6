package hingewise.planning;

import hingewise.costing.RepairCosts;
import hingewise.diagnosis.CauseOutlook;
import hingewise.diagnosis.Diagnosis;
import hingewise.diagnosis.RankedCause;
import hingewise.rulebook.Access;
import hingewise.rulebook.Cause;
import hingewise.rulebook.Confirmation;
import hingewise.rulebook.EvidenceKind;
import hingewise.rulebook.Moment;
import hingewise.rulebook.Observation;
import hingewise.rulebook.Reliability;
import hingewise.rulebook.RuleBook;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.joda.money.Money;

/**
 * Ranks confirmations one step ahead: by what each is expected to save against deciding now, less what it costs. A
 * check that answers several observations is worth at least its best one.
 */
public final class FirstSteps {
    private static final int FEWEST = 3;
    private static final double LEAST_BITS = .005;
    private static final Comparator<Worth> BEST =
            Comparator.comparingDouble(Worth::value).thenComparingDouble(Worth::bits);

    private final RuleBook rules;
    private final RepairCosts costs;
    private final String family;
    private final Diagnosis diagnosis;
    private final Set<Moment> moments;
    private final ExpectedLoss loss;
    private final Map<String, Double> now;
    private final Map<String, Boolean> answered;
    private final Map<String, CauseOutlook> outlooks = new HashMap<>();

    public FirstSteps(RuleBook rules, RepairCosts costs, String family, Diagnosis diagnosis) {
        this.rules = rules;
        this.costs = costs;
        this.family = family;
        this.diagnosis = diagnosis;
        this.moments = moments(diagnosis);
        this.loss = new ExpectedLoss(diagnosis, costs);
        this.now = chances(diagnosis);
        this.answered = diagnosis.readings().latest();
    }

    /**
     * The confirmations that can be done now and save anything, best first. Where fewer than three do, those follow that
     * tell most about the complaint, minute for minute: a decision may be clear and one may still want to be surer.
     */
    public List<Step> ranked() {
        List<Candidate> candidates = rules.confirmations().values().stream()
                .filter(this::possible)
                .filter(c -> !diagnosis.readings().tried().contains(c.id()))
                .map(this::candidate)
                .flatMap(Optional::stream)
                .toList();
        List<Step> saving = candidates.stream()
                .map(Candidate::step)
                .filter(s -> s.saves().isPositive())
                .sorted(Comparator.comparing(Step::net)
                        .reversed()
                        .thenComparing(s -> s.confirmation().id()))
                .toList();
        Stream<Step> telling = candidates.stream()
                .filter(c -> !c.step().saves().isPositive() && c.bits() >= LEAST_BITS)
                .sorted(Comparator.comparingDouble((Candidate c) ->
                                -c.bits() / Math.max(1, c.step().minutes()))
                        .thenComparing(c -> c.step().confirmation().id()))
                .map(Candidate::step)
                .limit(Math.max(0, FEWEST - saving.size()));
        return Stream.concat(saving.stream(), telling).toList();
    }

    /** A step and what it tells of the complaint's causes, in bits, summed cause by cause. */
    private record Candidate(Step step, double bits) {}

    /** Before anybody here has looked, only the seller and the listing's pictures can be asked. */
    private static Set<Moment> moments(Diagnosis diagnosis) {
        boolean arrived = diagnosis.readings().used().stream()
                .map(r -> r.entry().kind())
                .anyMatch(k -> k == EvidenceKind.LOOK || k == EvidenceKind.METER);
        return arrived ? Set.of(Moment.ARRIVAL, Moment.OPENED) : Set.of(Moment.LISTING);
    }

    private static Map<String, Double> chances(Diagnosis diagnosis) {
        Map<String, Double> chances = new LinkedHashMap<>();
        for (RankedCause ranked : diagnosis.causes()) {
            chances.put(ranked.cause().id(), ranked.probability());
        }
        return chances;
    }

    private boolean possible(Confirmation c) {
        return c.families().contains(family)
                && c.moments().stream().anyMatch(moments::contains)
                && c.possible(answered);
    }

    private Optional<Candidate> candidate(Confirmation c) {
        return (c.kind() == Confirmation.Kind.TRY ? bestCure(c) : bestAnswer(c)).map(worth -> {
            List<Access> path = costs.stepsTo(c.access(), diagnosis.readings().open());
            double minutes =
                    c.minutes() + path.stream().mapToDouble(Access::minutes).sum();
            Money cost = path.stream().map(Access::cost).map(costs::money).reduce(costs.money(c.cost()), Money::plus);
            double damage = damage(c.damages())
                    + path.stream().mapToDouble(a -> damage(a.damages())).sum();
            Money saves = costs.expected(worth.value());
            Step step = new Step(
                    c,
                    minutes,
                    cost,
                    path.stream().map(Access::id).toList(),
                    c.needs().keySet().stream()
                            .filter(o -> !answered.containsKey(o))
                            .sorted()
                            .toList(),
                    saves,
                    saves.minus(cost).minus(costs.labour(minutes)).minus(costs.expected(damage)),
                    Optional.empty(),
                    worth.why());
            return new Candidate(step, worth.bits());
        });
    }

    private double damage(Map<String, Double> damages) {
        return damages.entrySet().stream()
                .mapToDouble(d -> d.getValue() * (1 - now.getOrDefault(d.getKey(), 1.0)) * loss.ofDamage(d.getKey()))
                .sum();
    }

    /** The worth of a try: what it cures is saved, and what follows tells cure from failure. */
    private Optional<Worth> bestCure(Confirmation c) {
        return c.cures().entrySet().stream()
                .filter(e -> now.containsKey(e.getKey()))
                .map(e -> cure(e.getKey(), e.getValue()))
                .max(BEST);
    }

    private Worth cure(String cause, double chance) {
        double p = now.getOrDefault(cause, 0.0);
        double cured = p * chance;
        Map<String, Double> ifCured = new LinkedHashMap<>(diagnosis.givenCause(cause));
        Map<String, Double> ifNot = new LinkedHashMap<>();
        ifCured.forEach((id, given) ->
                ifNot.put(id, Math.max(0, (now.getOrDefault(id, 0.0) - cured * given) / (1 - cured))));
        ifCured.put(cause, 0.0);
        double value = loss.of(now) - cured * loss.of(ifCured) - (1 - cured) * loss.of(ifNot);
        return new Worth(
                value,
                loss.bits(now) - cured * loss.bits(ifCured) - (1 - cured) * loss.bits(ifNot),
                String.format(
                        Locale.ROOT,
                        "%s is %s (%s %%); this cures it in %.0f %% of cases.",
                        label(cause),
                        rules.words().of(p),
                        percent(p),
                        100 * chance));
    }

    private Optional<Worth> bestAnswer(Confirmation c) {
        EvidenceKind kind = c.kind() == Confirmation.Kind.QUESTION
                ? EvidenceKind.CLAIM
                : moments.contains(Moment.LISTING) ? EvidenceKind.PHOTO : EvidenceKind.LOOK;
        return c.settles().stream()
                .filter(o -> diagnosis
                        .readings()
                        .heaviest(o)
                        .filter(k -> k.compareTo(kind) >= 0)
                        .isEmpty())
                .map(rules.observations()::get)
                .filter(o -> o != null && o.families().contains(family))
                .map(o -> answer(o, kind))
                .max(BEST);
    }

    private Worth answer(Observation observation, EvidenceKind kind) {
        CauseOutlook outlook = outlooks.computeIfAbsent(observation.id(), diagnosis::outlook);
        Reliability reliability =
                Objects.requireNonNull(observation.reliability().get(kind));
        double trueYes = outlook.yes() * reliability.sensitivity();
        double falseYes = (1 - outlook.yes()) * (1 - reliability.specificity());
        double saidYes = trueYes + falseYes;
        Map<String, Double> ifYes = mix(outlook, trueYes / saidYes);
        Map<String, Double> ifNo = mix(outlook, (outlook.yes() - trueYes) / (1 - saidYes));
        double value = loss.of(now) - saidYes * loss.of(ifYes) - (1 - saidYes) * loss.of(ifNo);
        String moved = ifYes.keySet().stream()
                .max(Comparator.comparingDouble(
                        id -> Math.abs(ifYes.getOrDefault(id, 0.0) - ifNo.getOrDefault(id, 0.0))))
                .orElseThrow();
        return new Worth(
                value,
                loss.bits(now) - saidYes * loss.bits(ifYes) - (1 - saidYes) * loss.bits(ifNo),
                String.format(
                        Locale.ROOT,
                        "%s: %s %% if yes, %s %% if no.",
                        label(moved),
                        percent(ifYes.getOrDefault(moved, 0.0)),
                        percent(ifNo.getOrDefault(moved, 0.0))));
    }

    private static Map<String, Double> mix(CauseOutlook outlook, double yes) {
        return outlook.ifYes().keySet().stream()
                .collect(Collectors.toMap(
                        id -> id,
                        id -> yes * outlook.ifYes().getOrDefault(id, 0.0)
                                + (1 - yes) * outlook.ifNo().getOrDefault(id, 0.0)));
    }

    /** Whole per cent, never 0 or 100: nothing is certain. */
    private static String percent(double chance) {
        if (chance < .01) {
            return "<1";
        }
        return chance > .99 ? ">99" : String.format(Locale.ROOT, "%.0f", 100 * chance);
    }

    private String label(String cause) {
        return Optional.ofNullable(rules.causes().get(cause)).map(Cause::label).orElse(cause);
    }

    private record Worth(double value, double bits, String why) {}
}
