package hingewise.costing;

import hingewise.diagnosis.Diagnosis;
import hingewise.diagnosis.RankedCause;
import hingewise.rulebook.Access;
import hingewise.rulebook.Cause;
import hingewise.rulebook.Confirmation;
import hingewise.rulebook.Part;
import hingewise.rulebook.RuleBook;
import java.util.ArrayList;
import java.util.Comparator;
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
 * not having ordered, p · price of failure. Causes that a try cures at least as often as not wait for the try; and an
 * order waits for a try of a rival cause where the order it may save is worth more than the try.
 */
final class BrokenComponents {
    private static final double OFTEN = .5;
    /** A cause that leaves the component about as likely broken as before is no rival. */
    private static final double EXPLAINED_AWAY = .75;

    private final RuleBook rules;
    private final RepairCosts costs;
    private final Diagnosis diagnosis;
    private final double failure;
    private final Map<String, Set<String>> sureEnough = new LinkedHashMap<>();
    private final List<HeldPart> held = new ArrayList<>();

    BrokenComponents(RuleBook rules, RepairCosts costs, Diagnosis diagnosis) {
        this.rules = rules;
        this.costs = costs;
        this.diagnosis = diagnosis;
        this.failure = amount(costs.priceOfFailure());
        diagnosis.causes().stream()
                .map(RankedCause::cause)
                .filter(c -> !curedByTrying(c.id()))
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
        double chance = diagnosis.chanceOfAny(causes.stream().map(Cause::id).toList());
        if (parts.isEmpty() || chance < OFTEN) {
            return;
        }
        double price = parts.stream()
                .flatMap(p -> costs.bundlePrice(p).stream())
                .min(Comparator.naturalOrder())
                .map(BrokenComponents::amount)
                .orElse(0.0);
        if (chance * failure <= (1 - chance) * price) {
            return;
        }
        Optional<Confirmation> first = tryFirst(causes, price);
        if (first.isPresent()) {
            held.add(new HeldPart(component, leading(causes), first.get()));
        } else {
            sureEnough.put(component, leading(causes));
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

    private boolean curedByTrying(String cause) {
        return rules.confirmations().values().stream()
                .map(Confirmation::cures)
                .anyMatch(cures -> cures.getOrDefault(cause, 0.0) >= OFTEN);
    }

    /** The try that saves most by making the order needless, if it saves more than it costs. */
    private Optional<Confirmation> tryFirst(List<Cause> causes, double price) {
        Map<String, Boolean> answers = diagnosis.readings().latest();
        return rules.confirmations().values().stream()
                .filter(c -> c.families().contains(costs.family()) && c.possible(answers))
                .filter(c -> !diagnosis.readings().tried().contains(c.id()))
                .filter(c -> saves(c, causes, price) > cost(c))
                .max(Comparator.comparingDouble((Confirmation c) -> saves(c, causes, price) - cost(c))
                        .thenComparing(Confirmation::id));
    }

    /** Chance that it cures a rival, times the price of an order that is then likely in vain. */
    private double saves(Confirmation confirmation, List<Cause> causes, double price) {
        double most = 0;
        for (Map.Entry<String, Double> cure : confirmation.cures().entrySet()) {
            double cured = diagnosis.chanceOf(cure.getKey()) * cure.getValue();
            if (cured * price > most) {
                Map<String, Double> given = diagnosis.givenCause(cure.getKey());
                double stillBroken = causes.stream()
                        .mapToDouble(c -> given.getOrDefault(c.id(), 0.0))
                        .max()
                        .orElse(0);
                boolean explains = stillBroken <= EXPLAINED_AWAY * likeliest(causes);
                boolean needless = explains && stillBroken * failure <= (1 - stillBroken) * price;
                most = Math.max(most, needless ? cured * (1 - stillBroken) * price : 0);
            }
        }
        return most;
    }

    private double cost(Confirmation c) {
        List<Access> steps = costs.stepsTo(c.access(), diagnosis.readings().open());
        double minutes =
                c.minutes() + steps.stream().mapToDouble(Access::minutes).sum();
        Money money = steps.stream().map(Access::cost).map(costs::money).reduce(costs.money(c.cost()), Money::plus);
        return amount(money.plus(costs.labour(minutes)));
    }

    private static double amount(Money money) {
        return money.getAmount().doubleValue();
    }
}
