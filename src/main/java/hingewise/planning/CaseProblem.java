package hingewise.planning;

import hingewise.costing.RepairCosts;
import hingewise.costing.Terms;
import hingewise.decision.Act;
import hingewise.decision.Cure;
import hingewise.decision.Ending;
import hingewise.decision.Gate;
import hingewise.decision.Harm;
import hingewise.decision.Look;
import hingewise.decision.Need;
import hingewise.decision.Problem;
import hingewise.decision.Worlds;
import hingewise.diagnosis.Diagnosis;
import hingewise.diagnosis.PossiblePhones;
import hingewise.rulebook.Access;
import hingewise.rulebook.Cause;
import hingewise.rulebook.Confirmation;
import hingewise.rulebook.EvidenceKind;
import hingewise.rulebook.Observation;
import hingewise.rulebook.Raise;
import hingewise.rulebook.RuleBook;
import hingewise.rulebook.Sign;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A case put as a choice of what to do next. While there is a complaint only causes that may show it count: the rest is
 * looked at in the round of functions. What brings about a cause that does not count costs its repair at once.
 */
final class CaseProblem {
    /** What asking for one answer takes. */
    static final double ASKING_MINUTES = 1;

    private final RuleBook rules;
    private final RepairCosts costs;
    private final Diagnosis diagnosis;
    private final PossiblePhones phones;
    private final List<Cause> counted;
    private final Map<String, Integer> causes = new LinkedHashMap<>();
    /** The counted causes that show an observation, by its id. */
    private final Map<String, List<Cause>> showing;
    /** Ids of the observations that a history shows which raises a counted cause. */
    private final Set<String> ofPast;

    private final Risks risks;
    private final Map<String, Integer> signs = new LinkedHashMap<>();
    private final List<Access> gates = new ArrayList<>();
    private final Asking asking;
    private final Moments moments;
    private final List<Confirmation> confirmations = new ArrayList<>();
    private final Map<String, List<Observation>> looks = new HashMap<>();
    private final List<Packages.Package> packages;
    private final Alternatives alternatives;
    private final List<Decision> decisions = new ArrayList<>();
    private final Problem problem;

    CaseProblem(
            RuleBook rules,
            RepairCosts costs,
            Diagnosis diagnosis,
            PossiblePhones phones,
            Moments moments,
            Terms terms,
            Predicate<Confirmation> allowed,
            Concern concern) {
        this.rules = rules;
        this.costs = costs;
        this.diagnosis = diagnosis;
        this.phones = phones;
        this.asking = new Asking(rules, costs, diagnosis);
        this.moments = moments;
        this.alternatives = new Alternatives(costs, diagnosis, terms, !moments.listing());
        this.counted = concern.likeliest(diagnosis, Problem.MOST_CAUSES);
        counted.forEach(c -> causes.put(c.id(), causes.size()));
        this.showing = showing(counted);
        this.ofPast = ofPast(rules, counted);
        this.risks = new Risks(rules, costs, diagnosis, phones, causes);
        Packages repairs = new Packages(costs, diagnosis.readings().open(), counted);
        this.packages = repairs.worthWeighing(
                counted.stream().map(c -> phones.with(c.id())).toList(), phones.count());
        List<Act> acts = acts(allowed);
        List<Ending> endings = endings(repairs);
        this.problem = new Problem(
                counted.isEmpty() ? 0 : -1L >>> 64 - counted.size(),
                costs.priceOfFailure().getAmount().doubleValue(),
                counted.stream().map(c -> Reckoning.amount(repairs.later(c))).toList(),
                signs.size(),
                gates.stream().map(this::gate).toList(),
                acts,
                endings);
    }

    Problem problem() {
        return problem;
    }

    /** What must be answered first. */
    Asking asking() {
        return asking;
    }

    Moments moments() {
        return moments;
    }

    /** The causes that count, likeliest first. */
    List<Cause> counted() {
        return counted;
    }

    /** The confirmation that an act stands for. */
    Confirmation confirmation(int act) {
        return confirmations.get(act);
    }

    /** The confirmations that acts stand for, by number. */
    List<Confirmation> confirmations() {
        return List.copyOf(confirmations);
    }

    /** The access states that gates stand for, by number. */
    List<Access> gates() {
        return List.copyOf(gates);
    }

    /** The observations that signs stand for, by number. */
    List<Observation> signs() {
        return signs.keySet().stream()
                .map(o -> Objects.requireNonNull(rules.observations().get(o)))
                .toList();
    }

    /** Hands-on minutes of an act from the state the phone is in, opening included. */
    double minutes(int act) {
        Confirmation c = confirmations.get(act);
        return c.minutes()
                + costs.stepsTo(c.access(), diagnosis.readings().open()).stream()
                        .mapToDouble(Access::minutes)
                        .sum();
    }

    /** The decision that an ending stands for. */
    Decision decision(int ending) {
        return decisions.get(ending);
    }

    /** The observation that a sign stands for. */
    Observation sign(int number) {
        String id = List.copyOf(signs.keySet()).get(number);
        return Objects.requireNonNull(rules.observations().get(id));
    }

    /** What these gates (one bit each) stand for, outermost first. */
    List<Access> gates(long which) {
        return IntStream.range(0, gates.size())
                .filter(g -> (which >>> g & 1) != 0)
                .mapToObj(gates::get)
                .toList();
    }

    Worlds worlds() {
        long[] present = new long[phones.count()];
        counted.forEach(c -> set(present, phones.with(c.id()), number(c.id())));
        long[][] shows = new long[signs.size()][phones.count()];
        List<BitSet> otherwise = new ArrayList<>();
        Set<Integer> harms = Stream.concat(
                        problem.acts().stream().flatMap(a -> a.harms().stream()),
                        problem.gates().stream().flatMap(g -> g.harms().stream()))
                .map(Harm::cause)
                .collect(Collectors.toSet());
        for (String sign : signs.keySet()) {
            PossiblePhones.Showing shown =
                    phones.showing(sign, c -> causes.containsKey(c) && harms.contains(number(c)));
            BitSet other = (BitSet) shown.otherwise().clone();
            shown.by().forEach((cause, in) -> {
                if (causes.containsKey(cause)) {
                    set(shows[number(sign, signs)], in, number(cause));
                } else {
                    BitSet there = (BitSet) in.clone();
                    there.and(phones.with(cause));
                    other.or(there);
                }
            });
            otherwise.add(other);
        }
        return new Worlds(present, shows, otherwise);
    }

    private static void set(long[] bits, BitSet in, int number) {
        for (int i = in.nextSetBit(0); i >= 0; i = in.nextSetBit(i + 1)) {
            bits[i] |= 1L << number;
        }
    }

    private int number(String cause) {
        return number(cause, causes);
    }

    private static int number(String id, Map<String, Integer> numbers) {
        return Objects.requireNonNull(numbers.get(id));
    }

    private List<Ending> endings(Packages repairs) {
        Endings ways = Endings.of(counted, Reckoning.amount(alternatives.opening()), repairs, costs);
        List<Ending> endings = new ArrayList<>();
        add(endings, new Decision(Decision.Kind.LEAVE, List.of(), Set.of()), ways.sold(0, 0, 0));
        for (Packages.Package p :
                packages.stream().filter(p -> asking.possible(p.opens())).toList()) {
            long opens = 0;
            for (Access access : p.opens()) {
                opens |= 1L << gateNumber(access);
            }
            Decision repair = new Decision(Decision.Kind.REPAIR, List.copyOf(p.parts()), likely(p.causes()));
            add(endings, repair, ways.sold(Reckoning.amount(p.cost()), opens, ways.bits(p.causes())));
        }
        for (Alternative a : alternatives.all()) {
            if (a.kind() != Decision.Kind.BREAK || asking.possible(asking.closed())) {
                add(endings, new Decision(a.kind(), List.of(), Set.of()), List.of(ways.of(a)));
            }
        }
        return Ending.fromNothing(endings);
    }

    private void add(List<Ending> endings, Decision decision, List<Ending> some) {
        endings.addAll(some);
        some.forEach(e -> decisions.add(decision));
    }

    private Set<String> likely(Collection<String> ids) {
        return ids.stream().filter(c -> diagnosis.chanceOf(c) >= .5).collect(Collectors.toSet());
    }

    private List<Act> acts(Predicate<Confirmation> allowed) {
        rules.confirmations().values().stream()
                .filter(allowed)
                .filter(c -> c.families().contains(costs.family()))
                .filter(c -> c.moments().stream().anyMatch(moments.now()::contains))
                .filter(asking::possible)
                .filter(c -> !diagnosis.readings().tried().contains(c.id()))
                .filter(c -> !looks(c).isEmpty() || c.cures().keySet().stream().anyMatch(causes::containsKey))
                .map(c -> new Concerned(c, concerns(c)))
                .sorted(Comparator.comparingDouble(Concerned::chance)
                        .reversed()
                        .thenComparing(c -> c.confirmation().id()))
                .limit(Problem.MOST_ACTS)
                .map(Concerned::confirmation)
                .sorted(Comparator.comparing(Confirmation::id))
                .forEach(confirmations::add);
        return confirmations.stream().map(this::act).toList();
    }

    /** @param chance how likely it is that what it is about is there, summed over the causes */
    private record Concerned(Confirmation confirmation, double chance) {}

    private double concerns(Confirmation c) {
        Set<Cause> concerned = new HashSet<>();
        looks(c).forEach(o -> concerned.addAll(showing.getOrDefault(o.id(), List.of())));
        return counted.stream()
                .filter(x -> concerned.contains(x) || c.cures().containsKey(x.id()))
                .mapToDouble(x -> diagnosis.chanceOf(x.id()))
                .sum();
    }

    /** The observations it answers that may say anything new of what counts. */
    List<Observation> looks(Confirmation c) {
        return looks.computeIfAbsent(c.id(), id -> {
            EvidenceKind kind = moments.kind(c);
            return c.settles().stream()
                    .flatMap(o -> Optional.ofNullable(rules.observations().get(o)).stream())
                    .filter(o -> o.families().contains(costs.family()))
                    .filter(o -> bearing(o, touched(c), kind))
                    .toList();
        });
    }

    private static Set<String> touched(Confirmation c) {
        return Stream.concat(c.cures().keySet().stream(), c.damages().causes().stream())
                .collect(Collectors.toSet());
    }

    private Act act(Confirmation c) {
        EvidenceKind kind = moments.kind(c);
        String after = touched(c).isEmpty() ? "" : c.id();
        List<Look> looks = looks(c).stream().map(o -> look(o, kind, after)).toList();
        List<Cure> cures = c.cures().entrySet().stream()
                .filter(e -> causes.containsKey(e.getKey()))
                .map(e -> new Cure(number(e.getKey()), e.getValue()))
                .toList();
        List<Sheet.Need> opening =
                asking.needs(costs.stepsTo(c.access(), diagnosis.readings().open()));
        List<Need> needs = asking.needs(c).stream()
                .map(n -> new Need(look(n.observation(), kind, ""), n.answer(), opening.contains(n) ? 0 : costOf(1)))
                .toList();
        return new Act(
                c.id(),
                Reckoning.amount(costs.money(c.cost()).plus(costs.labour(c.minutes()))) + risks.uncounted(c.damages()),
                c.access().map(this::gateOf).orElse(Gate.NONE),
                needs,
                looks,
                cures,
                risks.harms(c.damages()));
    }

    private boolean bearing(Observation o, Set<String> touched, EvidenceKind kind) {
        List<Cause> shownBy = showing.getOrDefault(o.id(), List.of());
        boolean heard = diagnosis
                .readings()
                .heaviest(o.id())
                .filter(k -> k.compareTo(kind) >= 0)
                .isPresent();
        boolean changed = shownBy.stream().anyMatch(c -> touched.contains(c.id()));
        return changed || !heard && (ofPast.contains(o.id()) || !shownBy.isEmpty());
    }

    private static Map<String, List<Cause>> showing(List<Cause> counted) {
        Map<String, List<Cause>> showing = new HashMap<>();
        for (Cause cause : counted) {
            cause.signs()
                    .forEach(s -> showing.computeIfAbsent(s.observation(), o -> new ArrayList<>())
                            .add(cause));
        }
        return showing;
    }

    private static Set<String> ofPast(RuleBook rules, List<Cause> counted) {
        return counted.stream()
                .flatMap(c -> c.raisedBy().stream())
                .map(Raise::history)
                .distinct()
                .flatMap(h -> Optional.ofNullable(rules.histories().get(h)).stream())
                .flatMap(h -> h.signs().stream())
                .map(Sign::observation)
                .collect(Collectors.toSet());
    }

    private Look look(Observation o, EvidenceKind kind, String after) {
        int sign = signs.computeIfAbsent(o.id(), s -> signs.size());
        PossiblePhones.Look look = PossiblePhones.look(o, kind);
        return new Look(sign, look.ifSo(), look.ifNot(), after.hashCode());
    }

    private int gateOf(String access) {
        List<Access> path =
                costs.stepsTo(Optional.of(access), diagnosis.readings().open());
        path.forEach(this::gateNumber);
        return path.isEmpty() ? Gate.NONE : gates.indexOf(path.get(path.size() - 1));
    }

    private int gateNumber(Access access) {
        if (!gates.contains(access)) {
            gates.add(access);
        }
        return gates.indexOf(access);
    }

    private double costOf(int questions) {
        return Reckoning.amount(costs.labour(questions * ASKING_MINUTES));
    }

    /** What must be answered before opening is asked once, and paid for with the first step that needs it. */
    private Gate gate(Access access) {
        List<Access> steps =
                costs.stepsTo(Optional.of(access.id()), diagnosis.readings().open());
        int asked = asking.needs(steps).size()
                - asking.needs(steps.subList(0, steps.size() - 1)).size();
        return new Gate(
                access.parent()
                        .filter(p -> gates.contains(rules.access().get(p)))
                        .map(p -> gates.indexOf(rules.access().get(p)))
                        .orElse(Gate.NONE),
                Reckoning.amount(costs.opening(access)) + costOf(asked) + risks.uncounted(access.damages()),
                risks.harms(access.damages()),
                true);
    }
}
