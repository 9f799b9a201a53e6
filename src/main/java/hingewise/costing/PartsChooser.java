package hingewise.costing;

import hingewise.diagnosis.Diagnosis;
import hingewise.rulebook.Part;
import hingewise.rulebook.RuleBook;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.joda.money.Money;

/** The cheapest parts that renew what is sure enough to be broken. */
public final class PartsChooser {
    private final RuleBook rules;
    private final RepairCosts costs;

    public PartsChooser(RuleBook rules, RepairCosts costs) {
        this.rules = rules;
        this.costs = costs;
    }

    /** What to order now, and what to hold back until something was tried. */
    public PartsList choose(Diagnosis diagnosis) {
        BrokenComponents components = new BrokenComponents(rules, costs, diagnosis);
        return new PartsList(order(components.sureEnough()), components.held());
    }

    private List<OrderLine> order(Map<String, Set<String>> broken) {
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
