package hingewise.costing;

import hingewise.diagnosis.Diagnosis;
import hingewise.rulebook.RuleBook;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
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
        Map<String, Set<String>> broken = components.sureEnough();
        if (broken.isEmpty()) {
            return new PartsList(List.of(), components.held(), Optional.empty(), Optional.empty());
        }
        Purchasing purchasing = new Purchasing(costs, diagnosis.readings().open());
        Purchase purchase = purchasing.cheapest(broken.keySet());
        Set<String> renewed = purchase.renews();
        return new PartsList(
                lines(purchase, broken, diagnosis),
                components.held().stream()
                        .filter(h -> !renewed.contains(h.component()))
                        .toList(),
                Optional.of(purchase),
                purchasing.runnerUp(broken.keySet(), purchase));
    }

    private List<OrderLine> lines(Purchase purchase, Map<String, Set<String>> broken, Diagnosis diagnosis) {
        Map<String, Set<String>> causes = new TreeMap<>();
        for (Purchase.Line line : purchase.lines()) {
            Set<String> own = line.part().renews().stream()
                    .flatMap(component -> broken.getOrDefault(component, Set.of()).stream())
                    .collect(Collectors.toSet());
            costs.bundle(line.part())
                    .forEach(p -> causes.computeIfAbsent(p.id(), id -> new TreeSet<>())
                            .addAll(own));
        }
        Map<Set<String>, Double> chances =
                causes.values().stream().distinct().collect(Collectors.toMap(c -> c, diagnosis::chanceOfAny));
        return purchase.lines().stream()
                .map(line -> {
                    Set<String> own = causes.getOrDefault(line.part().id(), Set.of());
                    double chance = chances.getOrDefault(own, 0.0);
                    Money goods = line.offer()
                            .map(Offer::goods)
                            .orElse(Money.zero(costs.shop().currency()));
                    return new OrderLine(
                            line.part(),
                            line.offer().map(Offer::quantity).orElse(1),
                            line.offer(),
                            own,
                            chance,
                            costs.regret(line.offer(), goods, chance));
                })
                .toList();
    }
}
