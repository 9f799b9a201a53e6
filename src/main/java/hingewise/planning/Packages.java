package hingewise.planning;

import hingewise.costing.Offer;
import hingewise.costing.RepairCosts;
import hingewise.rulebook.Access;
import hingewise.rulebook.Cause;
import hingewise.rulebook.Part;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.joda.money.Money;

/** Repairs that may be committed to: parts fitted together, each opening and each part paid once. */
final class Packages {
    /** Most repairs that are weighed against each other. */
    private static final int MOST = 28;
    /** The likeliest causes are weighed one by one and together. */
    private static final int LIKELIEST = 8;

    private final RepairCosts costs;
    private final Set<String> open;
    private final List<Cause> causes;
    private final Map<String, Optional<Part>> cheapest = new HashMap<>();

    /**
     * A repair.
     *
     * @param parts to be fitted
     * @param causes ids of the causes it puts right
     * @param opens what is still closed and must be opened
     * @param cost parts and fitting, opening not included
     */
    record Package(Set<Part> parts, Set<String> causes, Set<Access> opens, Money cost) {}

    /**
     * @param open access states that are open
     * @param causes that count, likeliest first
     */
    Packages(RepairCosts costs, Set<String> open, List<Cause> causes) {
        this.costs = costs;
        this.open = open;
        this.causes = causes;
    }

    /**
     * What putting a cause right later costs by itself, opening and waiting not included. It is reckoned as a repair that
     * is chosen now is, else leaving what is surely broken would seem to cost less than mending it. Where no part does it,
     * what it takes off the worth beyond the price of failure, in which a discount is counted already: a phone that stays
     * locked to its last owner is not sold for little less than a working one.
     */
    Money later(Cause cause) {
        return part(cause.component())
                .map(costs::bundle)
                .map(this::withoutWaiting)
                .orElseGet(() -> beyondFailure(costs.lessLeft(cause.component())));
    }

    private Money beyondFailure(Money less) {
        return less.isGreaterThan(costs.priceOfFailure())
                ? less.minus(costs.priceOfFailure())
                : Money.zero(less.getCurrencyUnit());
    }

    /** What must be opened to put causes right later, from a closed phone, and which of them each step is for. */
    Map<Access, List<Cause>> openedLater() {
        Map<Access, List<Cause>> steps = new LinkedHashMap<>();
        for (Cause cause : causes) {
            part(cause.component()).map(costs::bundle).stream()
                    .flatMap(Set::stream)
                    .flatMap(p -> costs.stepsTo(p.access(), Set.of()).stream())
                    .distinct()
                    .forEach(s ->
                            steps.computeIfAbsent(s, x -> new ArrayList<>()).add(cause));
        }
        return steps;
    }

    /**
     * Repairs worth weighing: of the likeliest causes one by one and together, and of what is broken together in the
     * phones this one may be.
     *
     * @param with the possible phones that have each cause, in the order of the causes
     */
    List<Package> worthWeighing(List<BitSet> with, int phones) {
        Set<Set<String>> sets = new LinkedHashSet<>();
        List<Integer> repairable = new ArrayList<>();
        for (int c = 0; c < causes.size(); c++) {
            if (part(causes.get(c).component()).isPresent()) {
                repairable.add(c);
            }
        }
        Set<String> together = new LinkedHashSet<>();
        for (int c : repairable.stream().limit(LIKELIEST).toList()) {
            sets.add(Set.of(causes.get(c).component()));
            together.add(causes.get(c).component());
            sets.add(new LinkedHashSet<>(together));
        }
        sets.addAll(broken(repairable, with, phones));
        Map<Set<Part>, Package> packages = new LinkedHashMap<>();
        for (Set<String> components : sets) {
            if (packages.size() < MOST) {
                Package p = of(components);
                packages.putIfAbsent(p.parts(), p);
            }
        }
        return List.copyOf(packages.values());
    }

    /** The components that are broken together, most often first. */
    private List<Set<String>> broken(List<Integer> repairable, List<BitSet> with, int phones) {
        long[] there = new long[phones];
        for (int c : repairable) {
            for (int i = with.get(c).nextSetBit(0); i >= 0; i = with.get(c).nextSetBit(i + 1)) {
                there[i] |= 1L << c;
            }
        }
        // Phones with the same causes are counted together first: a set of names is made for each lot of them only.
        Map<Long, Integer> alike = new LinkedHashMap<>();
        for (long causesThere : there) {
            alike.merge(causesThere, 1, Integer::sum);
        }
        Map<Set<String>, Integer> broken = new LinkedHashMap<>();
        alike.forEach((causesThere, often) -> {
            Set<String> components = new LinkedHashSet<>();
            for (long rest = causesThere; rest != 0; rest &= rest - 1) {
                components.add(causes.get(Long.numberOfTrailingZeros(rest)).component());
            }
            if (!components.isEmpty()) {
                broken.merge(components, often, Integer::sum);
            }
        });
        return broken.entrySet().stream()
                .sorted(Map.Entry.<Set<String>, Integer>comparingByValue().reversed())
                .map(Map.Entry::getKey)
                .toList();
    }

    /** The repair that renews these components; those that no part renews are left. */
    Package of(Set<String> components) {
        Set<Part> parts = new LinkedHashSet<>();
        for (String component : components) {
            boolean there = parts.stream().anyMatch(p -> p.renews().contains(component));
            if (!there) {
                part(component).ifPresent(p -> parts.addAll(costs.bundle(p)));
            }
        }
        Set<String> renewed = parts.stream().flatMap(p -> p.renews().stream()).collect(Collectors.toSet());
        return new Package(
                parts,
                causes.stream()
                        .filter(c -> renewed.contains(c.component()))
                        .map(Cause::id)
                        .collect(Collectors.toCollection(LinkedHashSet::new)),
                opens(parts),
                cost(parts));
    }

    private Set<Access> opens(Collection<Part> parts) {
        return parts.stream()
                .flatMap(p -> costs.stepsTo(p.access(), open).stream())
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** The cheapest offers with the risk that a part is bad and what its origin takes off, the days they take, and fitting. */
    Money cost(Collection<Part> parts) {
        int days = offers(parts).mapToInt(Offer::days).max().orElse(0);
        return costs.perDay().multipliedBy(days).plus(withoutWaiting(parts));
    }

    private Money withoutWaiting(Collection<Part> parts) {
        return offers(parts)
                .map(o -> o.goods().plus(costs.risk(o)).plus(costs.lessResale(o)))
                .reduce(costs.labour(parts.stream().mapToDouble(Part::minutes).sum()), Money::plus);
    }

    private Stream<Offer> offers(Collection<Part> parts) {
        return parts.stream().flatMap(p -> costs.offer(p.id()).stream());
    }

    /** Opening included. */
    private Money whole(Collection<Part> parts) {
        return opens(parts).stream().map(costs::opening).reduce(cost(parts), Money::plus);
    }

    /** The part that renews a component for least, opening and what is bought with it included. */
    Optional<Part> part(String component) {
        return cheapest.computeIfAbsent(
                component,
                id -> costs.partsRenewing(id).stream()
                        .filter(p -> costs.offer(p.id()).isPresent())
                        .min(Comparator.comparing(p -> whole(costs.bundle(p)))));
    }
}
