package hingewise.offer;

import hingewise.casefile.Phone;
import hingewise.costing.PriceBook;
import hingewise.costing.RepairCosts;
import hingewise.costing.Shop;
import hingewise.diagnosis.Diagnosis;
import hingewise.rulebook.RuleBook;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** One phone valued at one set of figures. */
final class Valuation {
    private final RepairCosts costs;
    private final Routes routes;
    private final List<Repair> repairs;
    private final List<Choice> choices;

    private Valuation(RepairCosts costs, Routes routes, List<Repair> repairs, boolean returnable) {
        this.costs = costs;
        this.routes = routes;
        this.repairs = repairs;
        this.choices = Stream.concat(repairs.stream().map(Repair::choice), routes.others(returnable).stream())
                .toList();
    }

    /** A phone, and what is known of it. */
    record Subject(RuleBook rules, Phone phone, Diagnosis diagnosis, Ways ways, boolean returnable) {
        /** Every combination of what is at stake most may be repaired. */
        Valuation at(PriceBook prices, Shop shop, Shop.Model model) {
            RepairCosts costs = new RepairCosts(rules, prices, shop, phone);
            Routes routes = new Routes(rules, costs, model, diagnosis, ways);
            return new Valuation(costs, routes, routes.repairs(), returnable);
        }

        /** Only these repairs may be made. */
        Valuation at(PriceBook prices, Shop shop, Shop.Model model, List<List<Routes.Group>> repairs) {
            RepairCosts costs = new RepairCosts(rules, prices, shop, phone);
            Routes routes = new Routes(rules, costs, model, diagnosis, ways);
            return new Valuation(
                    costs, routes, repairs.stream().map(routes::repair).toList(), returnable);
        }
    }

    RepairCosts costs() {
        return costs;
    }

    List<Choice> choices() {
        return choices;
    }

    /** The repair that is expected to bring most, by these chances. */
    Repair bestRepair(double[] chances) {
        Choice best = new State(chances, repairs.stream().map(Repair::choice).toList()).best(0);
        return repairs.stream().filter(r -> r.choice().equals(best)).findFirst().orElseThrow();
    }

    /** The repairs that are best in some state, and the best of all. */
    List<List<Routes.Group>> bestRepairs(Knowledge knowledge) {
        List<List<Routes.Group>> best = new ArrayList<>();
        for (Knowledge.Outcome outcome : knowledge.outcomes()) {
            List<Routes.Group> made = bestRepair(outcome.chances()).groups();
            if (!best.contains(made)) {
                best.add(made);
            }
        }
        return best;
    }

    Deal deal(Knowledge knowledge) {
        Shop.Buying buying = costs.shop().buying();
        return new Deal(
                knowledge.states(choices),
                buying.importTax(),
                buying.shippingIn().getAmountMinorLong(),
                buying.margin().getAmountMinorLong());
    }

    Routes routes() {
        return routes;
    }
}
