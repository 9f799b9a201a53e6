package hingewise.costing;

import hingewise.diagnosis.Diagnosis;
import hingewise.diagnosis.RankedCause;
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
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.joda.money.Money;

/**
 * The cheapest parts that renew what is sure enough to be broken. A component is sure enough when ordering for nothing,
 * (1 − p) · price, is expected to cost less than not having ordered, p · price of failure. Causes that a try cures at
 * least as often as not wait for the try.
 */
public final class PartsChooser {
    private static final double OFTEN = .5;

    private final RuleBook rules;
    private final RepairCosts costs;

    public PartsChooser(RuleBook rules, RepairCosts costs) {
        this.rules = rules;
        this.costs = costs;
    }

    /** The parts to order now, in the order of the rule book. */
    public List<OrderLine> toOrder(Diagnosis diagnosis) {
        Map<String, Set<String>> broken = broken(diagnosis);
        Map<Part, Set<String>> chosen = new LinkedHashMap<>();
        for (Part part : cheapestCover(List.copyOf(broken.keySet()))) {
            Set<String> causes = part.renews().stream()
                    .flatMap(c -> broken.getOrDefault(c, Set.of()).stream())
                    .collect(Collectors.toCollection(TreeSet::new));
            chosen.computeIfAbsent(part, p -> new TreeSet<>()).addAll(causes);
            for (String with : part.alongside()) {
                Part needed = rules.parts().get(with);
                if (needed != null) {
                    chosen.computeIfAbsent(needed, p -> new TreeSet<>()).addAll(causes);
                }
            }
        }
        return chosen.entrySet().stream()
                .map(e -> new OrderLine(e.getKey(), 1, costs.offer(e.getKey().id()), e.getValue()))
                .toList();
    }

    /** Components sure enough to be broken, and the causes that make them so. */
    private Map<String, Set<String>> broken(Diagnosis diagnosis) {
        Map<String, List<Cause>> byComponent = diagnosis.causes().stream()
                .map(RankedCause::cause)
                .filter(c -> !curedByTrying(c.id()))
                .collect(Collectors.groupingBy(Cause::component, LinkedHashMap::new, Collectors.toList()));
        Map<String, Set<String>> broken = new LinkedHashMap<>();
        byComponent.forEach((component, causes) -> {
            List<Part> parts = costs.partsRenewing(component);
            if (parts.isEmpty()) {
                return;
            }
            double chance = diagnosis.chanceOfAny(causes.stream().map(Cause::id).toList());
            double price = parts.stream()
                    .flatMap(p -> costs.bundlePrice(p).stream())
                    .min(Comparator.naturalOrder())
                    .map(m -> m.getAmount().doubleValue())
                    .orElse(0.0);
            double failure = costs.priceOfFailure().getAmount().doubleValue();
            if (chance >= OFTEN && chance * failure > (1 - chance) * price) {
                double leading = causes.stream()
                        .mapToDouble(c -> diagnosis.chanceOf(c.id()))
                        .max()
                        .orElse(0);
                broken.put(
                        component,
                        causes.stream()
                                .map(Cause::id)
                                .filter(c -> diagnosis.chanceOf(c) >= leading / 2)
                                .collect(Collectors.toCollection(LinkedHashSet::new)));
            }
        });
        return broken;
    }

    private boolean curedByTrying(String cause) {
        return rules.confirmations().values().stream()
                .map(Confirmation::cures)
                .anyMatch(cures -> cures.getOrDefault(cause, 0.0) >= OFTEN);
    }

    /** The set of parts of least total price that renews every component; exact, over subsets of components. */
    private List<Part> cheapestCover(List<String> components) {
        int full = (1 << components.size()) - 1;
        List<Optional<Cover>> best = new ArrayList<>();
        for (int need = 0; need <= full; need++) {
            best.add(need == 0 ? Optional.of(new Cover(costs.expected(0), 0, List.of())) : Optional.empty());
            if (need > 0) {
                int lowest = Integer.numberOfTrailingZeros(need);
                for (Part part : costs.partsRenewing(components.get(lowest))) {
                    int covers = 0;
                    for (int i = 0; i < components.size(); i++) {
                        covers |= part.renews().contains(components.get(i)) ? 1 << i : 0;
                    }
                    Optional<Cover> candidate = best.get(need & ~covers).map(rest -> rest.with(part, costs));
                    if (candidate.isPresent()
                            && (best.get(need).isEmpty()
                                    || candidate.get().compareTo(best.get(need).get()) < 0)) {
                        best.set(need, candidate);
                    }
                }
            }
        }
        return best.get(full).map(Cover::parts).orElse(List.of());
    }

    /** Parts chosen so far; those without an offer are chosen only where nothing else does. */
    private record Cover(Money price, int missing, List<Part> parts) implements Comparable<Cover> {
        Cover with(Part part, RepairCosts costs) {
            List<Part> more = new ArrayList<>(parts);
            more.add(part);
            Optional<Money> price = costs.bundlePrice(part);
            return new Cover(
                    price.map(this.price::plus).orElse(this.price), missing + (price.isPresent() ? 0 : 1), more);
        }

        @Override
        public int compareTo(Cover other) {
            return missing != other.missing ? Integer.compare(missing, other.missing) : price.compareTo(other.price);
        }
    }
}
