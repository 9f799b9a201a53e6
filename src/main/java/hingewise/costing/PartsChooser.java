package hingewise.costing;

import hingewise.diagnosis.Diagnosis;
import hingewise.rulebook.Part;
import hingewise.rulebook.RuleBook;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** The cheapest parts that renew what is sure enough to be broken; labour is not weighed yet. */
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
        Map<String, List<Part>> renewing = new LinkedHashMap<>();
        broken.keySet().forEach(component -> renewing.put(component, costs.partsRenewing(component)));
        Set<Part> bought = new CheapestCover(renewing, rules.parts().values(), costs::bundle, this::price).parts();
        Map<Part, Set<String>> causes = new LinkedHashMap<>();
        bought.forEach(part -> causes.put(part, new TreeSet<>()));
        for (Part part : bought) {
            Set<String> own = part.renews().stream()
                    .flatMap(component -> broken.getOrDefault(component, Set.of()).stream())
                    .collect(Collectors.toSet());
            costs.bundle(part)
                    .forEach(p -> causes.getOrDefault(p, new TreeSet<>()).addAll(own));
        }
        return causes.entrySet().stream()
                .map(e -> new OrderLine(e.getKey(), 1, costs.offer(e.getKey().id()), e.getValue()))
                .toList();
    }

    private Optional<BigDecimal> price(Part part) {
        return costs.offer(part.id()).map(offer -> offer.price().getAmount());
    }
}
