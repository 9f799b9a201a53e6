package hingewise.offer;

import hingewise.costing.Proceeds;
import hingewise.costing.Purchase;
import hingewise.costing.Purchasing;
import hingewise.costing.RepairCosts;
import hingewise.costing.Shop;
import hingewise.diagnosis.Diagnosis;
import hingewise.rulebook.Access;
import hingewise.rulebook.Confirmation;
import hingewise.rulebook.Part;
import hingewise.rulebook.RuleBook;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.joda.money.Money;

/** What each route brings in each way a phone may be: net proceeds before its price, in minor units. */
final class Routes {
    /** So many groups of parts and tries are weighed in every combination. */
    private static final int WEIGHED = 5;

    private final RepairCosts costs;
    private final Shop shop;
    private final Shop.Model model;
    private final Proceeds proceeds;
    private final Ways ways;
    private final Bench bench;
    private final Set<String> open;
    private final Leftovers leftovers;
    private final double[] factors;

    Routes(RuleBook rules, RepairCosts costs, Shop.Model model, Diagnosis diagnosis, Bench bench) {
        this.costs = costs;
        this.shop = costs.shop();
        this.model = model;
        this.proceeds = new Proceeds(costs, model, diagnosis.readings());
        this.ways = bench.ways();
        this.bench = bench;
        this.open = bench.open();
        this.factors = ways.factors(model.spread().doubleValue());
        this.leftovers = new Leftovers(rules, costs, diagnosis, ways, minor(proceeds.afterFee(model.resale())));
    }

    /** Something a repair may be made of: components renewed together, or a try. */
    record Group(Set<String> components, Optional<Confirmation> attempt) {}

    /** Repairs of every combination of what is at stake most. */
    List<Repair> repairs() {
        return repairs(groups());
    }

    List<Repair> repairs(List<Group> groups) {
        List<Repair> repairs = new ArrayList<>();
        for (int subset = 0; subset < 1 << groups.size(); subset++) {
            int chosen = subset;
            repairs.add(repair(IntStream.range(0, groups.size())
                    .filter(g -> (chosen >> g & 1) == 1)
                    .mapToObj(groups::get)
                    .toList()));
        }
        return repairs;
    }

    /** What is at stake most: expected cost if it is left behind. */
    List<Group> groups() {
        Map<String, Set<String>> byPart = new LinkedHashMap<>();
        for (String component : leftovers.components()) {
            costs.partsRenewing(component).stream()
                    .filter(p -> costs.bundlePrice(p).isPresent())
                    .min(Comparator.comparing((Part p) -> costs.bundlePrice(p).orElseThrow())
                            .thenComparing(Part::id))
                    .ifPresent(p -> byPart.computeIfAbsent(p.id(), id -> new LinkedHashSet<>())
                            .add(component));
        }
        long[] all = leftovers.cost(c -> false, Map.of(), open);
        Map<Group, Double> stakes = new LinkedHashMap<>();
        byPart.values()
                .forEach(components -> stakes.put(
                        new Group(components, Optional.empty()),
                        expected(all) - expected(leftovers.cost(components::contains, Map.of(), open))));
        leftovers.tries().stream()
                .filter(t -> !bench.tried().contains(t.id()))
                .forEach(t -> stakes.put(
                        new Group(Set.of(), Optional.of(t)),
                        expected(all) - expected(leftovers.cost(c -> false, leftovers.cured(t), open))));
        return stakes.entrySet().stream()
                .filter(e -> e.getValue() > 0)
                .sorted(Map.Entry.<Group, Double>comparingByValue().reversed())
                .limit(WEIGHED)
                .map(Map.Entry::getKey)
                .toList();
    }

    /** A repair of these groups. What it leaves behind is paid for. */
    Repair repair(List<Group> groups) {
        Set<String> components = groups.stream()
                .flatMap(g -> g.components().stream())
                .collect(Collectors.toCollection(LinkedHashSet::new));
        List<Confirmation> tries =
                groups.stream().flatMap(g -> g.attempt().stream()).toList();
        Purchase purchase = new Purchasing(costs, open).cheapest(components);
        Set<String> opened = purchase.lines().stream()
                .flatMap(l -> costs.stepsTo(l.part().access(), open).stream())
                .map(Access::id)
                .collect(Collectors.toCollection(LinkedHashSet::new));
        opened.addAll(open);
        Money fixed = purchase.total().minus(purchase.risk());
        Map<String, BitSet> cured = new HashMap<>();
        for (Confirmation attempt : tries) {
            fixed = fixed.plus(leftovers.cost(attempt, opened));
            costs.stepsTo(attempt.access(), opened).forEach(s -> opened.add(s.id()));
            leftovers.cured(attempt).forEach((cause, in) -> cured.merge(cause, in, Routes::or));
        }
        Set<String> renewed = purchase.renews();
        long[] cost = leftovers.cost(renewed::contains, cured, opened);
        long paid = minor(fixed);
        for (int w = 0; w < cost.length; w++) {
            cost[w] += paid;
        }
        purchase.lines().stream().flatMap(l -> l.offer().stream()).forEach(o -> {
            long bad = minor(shop.badPart().plus(costs.perDay().multipliedBy(o.days())));
            ways.happens(o.part() + " is bad", o.badOnArrival()).stream().forEach(w -> cost[w] += bad);
        });
        long[] proceeds = working(bench.opened() || !opened.isEmpty());
        for (int w = 0; w < cost.length; w++) {
            proceeds[w] -= cost[w];
        }
        return new Repair(groups, purchase, cost, new Choice(Route.REPAIR.id(), proceeds));
    }

    private static BitSet or(BitSet a, BitSet b) {
        BitSet or = (BitSet) a.clone();
        or.or(b);
        return or;
    }

    /** The routes beside repairing. */
    List<Choice> others(boolean returnable) {
        long[] asIs = asIs();
        return Stream.of(
                        model.service().map(s -> service(s, asIs)),
                        shop.returns()
                                .filter(r -> returnable && !bench.opened())
                                .map(r -> returning(r, asIs)),
                        Optional.of(new Choice(Route.AS_IS.id(), asIs)),
                        Optional.of(new Choice(Route.BREAK.id(), broken())))
                .flatMap(Optional::stream)
                .toList();
    }

    private Choice service(Shop.Service service, long[] asIs) {
        BitSet refused = new BitSet();
        service.refusesAfter().forEach((history, chance) -> {
            BitSet after = ways.afterHistory(history);
            after.and(ways.happens("refused after " + history, chance.doubleValue()));
            refused.or(after);
        });
        if (bench.opened()) {
            refused.or(ways.happens("refused as opened", service.refusesOpened().doubleValue()));
        }
        long[] left = leftovers.cost(service.renews()::contains, Map.of(), Set.of());
        long[] proceeds = working(bench.opened());
        long done = minor(
                service.quote().plus(service.shipping()).plus(costs.perDay().multipliedBy(service.days())));
        long not = minor(
                service.refusal().plus(service.shipping()).plus(costs.perDay().multipliedBy(service.days())));
        for (int w = 0; w < proceeds.length; w++) {
            proceeds[w] = refused.get(w) ? asIs[w] - not : proceeds[w] - done - left[w];
        }
        return new Choice(Route.SERVICE.id(), proceeds);
    }

    private Choice returning(Shop.Returning returning, long[] asIs) {
        BitSet accepted = ways.happens("taken back", returning.accepted().doubleValue());
        long shipping = minor(returning.shipping());
        long[] proceeds = new long[ways.count()];
        for (int w = 0; w < proceeds.length; w++) {
            proceeds[w] = accepted.get(w) ? -shipping : asIs[w];
        }
        return new Choice(Route.RETURN.id(), proceeds, accepted);
    }

    /** What a phone brings that works. */
    private long[] working(boolean opened) {
        return scattered(proceeds.working(opened), proceeds.selling());
    }

    private long[] asIs() {
        long spent = minor(proceeds.sellingAsIs());
        long[] less = new long[ways.count()];
        proceeds.asIsLess()
                .forEach((component, amount) ->
                        leftovers.broken(component).stream().forEach(w -> less[w] += minor(amount)));
        long[] brings = scattered(proceeds.asIs(), Money.zero(shop.currency()));
        for (int w = 0; w < brings.length; w++) {
            brings[w] = Math.max(0, brings[w] - less[w]) - spent;
        }
        return brings;
    }

    private long[] broken() {
        long work = minor(proceeds.breaking());
        long[] brings = new long[ways.count()];
        proceeds.salvage().forEach((id, price) -> {
            BitSet lost = new BitSet();
            costs.part(id).ifPresent(p -> p.renews().forEach(c -> lost.or(leftovers.broken(c))));
            long whole = minor(price);
            for (int w = 0; w < brings.length; w++) {
                brings[w] += lost.get(w) ? 0 : whole;
            }
        });
        for (int w = 0; w < brings.length; w++) {
            brings[w] = Math.round(brings[w] * factors[w]) - work;
        }
        return brings;
    }

    private long[] scattered(Money price, Money less) {
        long amount = minor(price);
        long off = minor(less);
        return IntStream.range(0, factors.length)
                .mapToLong(w -> Math.round(amount * factors[w]) - off)
                .toArray();
    }

    private double expected(long[] amounts) {
        double[] weights = ways.weights();
        return IntStream.range(0, amounts.length)
                .mapToDouble(w -> weights[w] * amounts[w])
                .sum();
    }

    private static long minor(Money money) {
        return money.getAmountMinorLong();
    }
}
