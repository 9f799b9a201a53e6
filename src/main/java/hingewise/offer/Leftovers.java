package hingewise.offer;

import hingewise.costing.RepairCosts;
import hingewise.diagnosis.Diagnosis;
import hingewise.diagnosis.RankedCause;
import hingewise.rulebook.Access;
import hingewise.rulebook.Cause;
import hingewise.rulebook.Confirmation;
import hingewise.rulebook.RuleBook;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.joda.money.Money;

/**
 * What faults cost that a repair did not set out to mend. Each component with a fault costs the cheapest of a part, a try
 * that cures it at least as often as not, and of stating it in the note, which takes its share off the price. What lies
 * behind what is open anyway, or outside, is found and mended in the same go. What needs a further opening comes as a
 * failure: for all of that together the price of failure is paid once, but never more than it costs itself.
 */
final class Leftovers {
    private static final double OFTEN = .5;

    private final RuleBook rules;
    private final Diagnosis diagnosis;
    private final RepairCosts costs;
    private final Ways ways;
    private final long failure;
    private final Map<String, List<Fault>> faults = new LinkedHashMap<>();
    private final Map<String, Long> opening = new HashMap<>();

    /** One way to mend a fault: what it costs in minor units, and the steps of opening it needs. */
    private record Mending(long cost, List<String> steps) {}

    /**
     * A fault of a component.
     *
     * @param in the ways in which it is there
     * @param stated what it takes off the price when it is stated, in minor units
     */
    private record Fault(String cause, BitSet in, long stated, List<Mending> mendings) {}

    /** @param beyond whether it needs a further opening */
    private record Cost(long amount, boolean beyond) {}

    /** @param resale what a working phone brings, fees taken off, in minor units */
    Leftovers(RuleBook rules, RepairCosts costs, Diagnosis diagnosis, Ways ways, long resale) {
        this.rules = rules;
        this.diagnosis = diagnosis;
        this.costs = costs;
        this.ways = ways;
        this.failure = costs.priceOfFailure().getAmountMinorLong();
        rules.access()
                .values()
                .forEach(a -> opening.put(a.id(), costs.opening(a).getAmountMinorLong()));
        for (RankedCause ranked : diagnosis.causes()) {
            Cause cause = ranked.cause();
            BitSet in = ways.withCause(cause.id());
            if (!in.isEmpty()) {
                long stated = costs.shop()
                        .condition()
                        .leaving(cause.component())
                        .multiply(BigDecimal.valueOf(resale))
                        .longValue();
                faults.computeIfAbsent(cause.component(), c -> new ArrayList<>())
                        .add(new Fault(cause.id(), in, stated, mendings(cause)));
            }
        }
    }

    private List<Mending> mendings(Cause cause) {
        List<Mending> mendings = new ArrayList<>();
        costs.partsRenewing(cause.component())
                .forEach(p -> costs.bundlePrice(p)
                        .ifPresent(price -> mendings.add(new Mending(
                                price.plus(costs.labour(p.minutes())).getAmountMinorLong(), steps(p.access())))));
        rules.confirmations().values().stream()
                .filter(c -> c.families().contains(costs.family()))
                .filter(c -> c.cures().getOrDefault(cause.id(), 0.0) >= OFTEN)
                .forEach(c -> mendings.add(new Mending(own(c).getAmountMinorLong(), steps(c.access()))));
        return mendings;
    }

    private List<String> steps(Optional<String> access) {
        return rules.pathTo(access).stream().map(Access::id).toList();
    }

    /** Components that have a fault in any of the ways. */
    Set<String> components() {
        return faults.keySet();
    }

    /** The ways in which a component has a fault. */
    BitSet broken(String component) {
        BitSet broken = new BitSet();
        faults.getOrDefault(component, List.of()).forEach(f -> broken.or(f.in()));
        return broken;
    }

    /**
     * What they cost, by way.
     *
     * @param renewed components that have no fault any more
     * @param cured for causes that a try may have cured, the ways in which it did
     * @param open the access states that are open
     */
    long[] cost(Predicate<String> renewed, Map<String, BitSet> cured, Set<String> open) {
        long[] sum = new long[ways.count()];
        long[] beyond = new long[ways.count()];
        faults.forEach((component, own) -> {
            if (!renewed.test(component)) {
                add(own, cured, open, sum, beyond);
            }
        });
        for (int w = 0; w < sum.length; w++) {
            sum[w] += Math.min(beyond[w], failure);
        }
        return sum;
    }

    /** Of several faults of a component the dearest counts: what puts it right puts the others right as well. */
    private void add(List<Fault> own, Map<String, BitSet> cured, Set<String> open, long[] sum, long[] beyond) {
        long[] worst = new long[sum.length];
        BitSet further = new BitSet();
        BitSet any = new BitSet();
        for (Fault fault : own) {
            Cost cost = cost(fault, open);
            BitSet in = (BitSet) fault.in().clone();
            in.andNot(cured.getOrDefault(fault.cause(), new BitSet()));
            any.or(in);
            for (int w = in.nextSetBit(0); w >= 0; w = in.nextSetBit(w + 1)) {
                if (cost.amount() > worst[w]) {
                    worst[w] = cost.amount();
                    further.set(w, cost.beyond());
                }
            }
        }
        for (int w = any.nextSetBit(0); w >= 0; w = any.nextSetBit(w + 1)) {
            sum[w] += worst[w];
            beyond[w] += further.get(w) ? worst[w] : 0;
        }
    }

    private Cost cost(Fault fault, Set<String> open) {
        Cost least = new Cost(fault.stated(), false);
        for (Mending mending : fault.mendings()) {
            long cost = mending.cost();
            boolean beyond = false;
            for (String step : mending.steps()) {
                if (!open.contains(step)) {
                    beyond = true;
                    cost += opening.getOrDefault(step, 0L);
                }
            }
            if (cost < least.amount()) {
                least = new Cost(cost, beyond);
            }
        }
        return least;
    }

    /** What a confirmation costs, opening included. */
    Money cost(Confirmation confirmation, Set<String> open) {
        return costs.stepsTo(confirmation.access(), open).stream()
                .map(costs::opening)
                .reduce(own(confirmation), Money::plus);
    }

    private Money own(Confirmation confirmation) {
        return costs.money(confirmation.cost()).plus(costs.labour(confirmation.minutes()));
    }

    /** The tries that cure a cause at least as often as not, and that no recorded answer forbids. */
    List<Confirmation> tries() {
        return rules.confirmations().values().stream()
                .filter(c -> c.kind() == Confirmation.Kind.TRY)
                .filter(c -> rules.possible(
                        c, diagnosis.readings().latest(), diagnosis.readings().open()))
                .filter(c -> c.families().contains(costs.family()))
                .filter(c -> c.cures().values().stream().anyMatch(chance -> chance >= OFTEN))
                .toList();
    }

    /** The ways in which a try cures each cause that it may cure. */
    Map<String, BitSet> cured(Confirmation attempt) {
        Map<String, BitSet> cured = new LinkedHashMap<>();
        attempt.cures().forEach((cause, chance) -> {
            BitSet in = ways.withCause(cause);
            in.and(ways.happens(cures(attempt.id(), cause), chance));
            cured.put(cause, in);
        });
        return cured;
    }

    /** What it is called that a try cures a cause. */
    static String cures(String attempt, String cause) {
        return attempt + " cures " + cause;
    }
}
