package hingewise.costing;

import hingewise.diagnosis.Diagnosis;
import hingewise.diagnosis.RankedCause;
import hingewise.rulebook.Access;
import hingewise.rulebook.Cause;
import hingewise.rulebook.Confirmation;
import hingewise.rulebook.EvidenceKind;
import hingewise.rulebook.Moment;
import hingewise.rulebook.Part;
import hingewise.rulebook.RuleBook;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.joda.money.Money;

/**
 * The components that are sure enough to be broken: ordering for nothing, (1 − p) · price, is expected to cost less than
 * not having ordered, p · price of failure. An order waits for a try, of the broken component itself or of a rival
 * cause, where the order it may save is worth more than the try.
 */
final class BrokenComponents {
    /** However cheap a part is, it is not ordered for what is hardly likelier than not: one looks first. */
    private static final double LIKELY = .6;

    /** What is less likely is not spoken of. */
    private static final double NOW_AND_THEN = .25;

    /** A cause that leaves the component about as likely broken as before is no rival. */
    private static final double EXPLAINED_AWAY = .75;

    private final RuleBook rules;
    private final RepairCosts costs;
    private final Diagnosis diagnosis;
    private final double failure;
    private final boolean arrived;
    private final Map<String, Set<String>> sureEnough = new LinkedHashMap<>();
    private final List<HeldPart> held = new ArrayList<>();

    BrokenComponents(RuleBook rules, RepairCosts costs, Diagnosis diagnosis) {
        this.rules = rules;
        this.costs = costs;
        this.diagnosis = diagnosis;
        this.failure = amount(costs.priceOfFailure());
        this.arrived = diagnosis.readings().used().stream()
                .map(r -> r.entry().kind())
                .anyMatch(k -> k == EvidenceKind.LOOK || k == EvidenceKind.METER);
        diagnosis.causes().stream()
                .map(RankedCause::cause)
                .collect(Collectors.groupingBy(Cause::component, LinkedHashMap::new, Collectors.toList()))
                .forEach(this::sort);
    }

    /** Components to order for, and the causes that make them broken. */
    Map<String, Set<String>> sureEnough() {
        return sureEnough;
    }

    List<HeldPart> held() {
        return held;
    }

    private void sort(String component, List<Cause> causes) {
        List<Part> parts = costs.partsRenewing(component);
        if (parts.isEmpty()) {
            return;
        }
        double chance = diagnosis.chanceOfAny(causes.stream().map(Cause::id).toList());
        if (chance < NOW_AND_THEN) {
            return;
        }
        Optional<Part> cheapest = parts.stream()
                .filter(p -> costs.bundlePrice(p).isPresent())
                .min(Comparator.comparing(p -> costs.bundlePrice(p).orElseThrow()));
        Money bundle = cheapest.flatMap(costs::bundlePrice)
                .orElse(Money.zero(costs.shop().currency()));
        double price = amount(bundle);
        Optional<Confirmation> first = tryFirst(causes, parts, price);
        if (first.isEmpty() && chance >= LIKELY && chance * failure > (1 - chance) * price) {
            sureEnough.put(component, leading(causes));
        } else {
            Regret regret = costs.regret(cheapest.flatMap(p -> costs.offer(p.id())), bundle, chance);
            held.add(new HeldPart(component, leading(causes), first, chance, regret));
        }
    }

    private Set<String> leading(List<Cause> causes) {
        double most = likeliest(causes);
        return causes.stream()
                .map(Cause::id)
                .filter(c -> diagnosis.chanceOf(c) >= most / 2)
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    private double likeliest(List<Cause> causes) {
        return causes.stream()
                .mapToDouble(c -> diagnosis.chanceOf(c.id()))
                .max()
                .orElse(0);
    }

    /** The try that saves most by making the order needless, if it saves more than it costs. */
    private Optional<Confirmation> tryFirst(List<Cause> causes, List<Part> parts, double price) {
        Map<String, Boolean> answers = diagnosis.readings().latest();
        Set<String> open = opened(parts);
        return rules.confirmations().values().stream()
                .filter(c -> c.families().contains(costs.family())
                        && rules.possible(c, answers, diagnosis.readings().open()))
                .filter(c -> !arrived || !c.moments().equals(Set.of(Moment.LISTING)))
                .filter(c -> !diagnosis.readings().tried().contains(c.id()))
                .filter(c -> saves(c, causes, price) > cost(c, open))
                .max(Comparator.comparingDouble((Confirmation c) -> saves(c, causes, price) - cost(c, open))
                        .thenComparing(Confirmation::id));
    }

    /** What is open already and what fitting any of the parts opens anyway: a try behind that costs only itself. */
    private Set<String> opened(List<Part> parts) {
        Set<String> open = new HashSet<>(diagnosis.readings().open());
        parts.stream()
                .map(p -> rules.pathTo(p.access()).stream().map(Access::id).collect(Collectors.toSet()))
                .reduce((a, b) -> a.stream().filter(b::contains).collect(Collectors.toSet()))
                .ifPresent(open::addAll);
        return open;
    }

    /** Chance that it cures, times the price of an order that is then likely in vain. */
    private double saves(Confirmation confirmation, List<Cause> causes, double price) {
        double most = 0;
        for (Map.Entry<String, Double> cure : confirmation.cures().entrySet()) {
            double cured = diagnosis.chanceOf(cure.getKey()) * cure.getValue();
            if (cured * price > most) {
                Map<String, Double> given = diagnosis.givenCause(cure.getKey());
                boolean own = causes.stream().anyMatch(c -> c.id().equals(cure.getKey()));
                double stillBroken = causes.stream()
                        .filter(c -> !c.id().equals(cure.getKey()))
                        .mapToDouble(c -> given.getOrDefault(c.id(), 0.0))
                        .max()
                        .orElse(0);
                boolean explains = own || stillBroken <= EXPLAINED_AWAY * likeliest(causes);
                boolean needless = explains && stillBroken * failure <= (1 - stillBroken) * price;
                most = Math.max(most, needless ? cured * (1 - stillBroken) * price : 0);
            }
        }
        return most;
    }

    private double cost(Confirmation c, Set<String> open) {
        List<Access> steps = costs.stepsTo(c.access(), open);
        double minutes =
                c.minutes() + steps.stream().mapToDouble(Access::minutes).sum();
        Money money = steps.stream().map(Access::cost).map(costs::money).reduce(costs.money(c.cost()), Money::plus);
        return amount(money.plus(costs.labour(minutes)));
    }

    private static double amount(Money money) {
        return money.getAmount().doubleValue();
    }
}
