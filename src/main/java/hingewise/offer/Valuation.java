package hingewise.offer;

import hingewise.casefile.Phone;
import hingewise.costing.PriceBook;
import hingewise.costing.RepairCosts;
import hingewise.costing.Shop;
import hingewise.diagnosis.Diagnosis;
import hingewise.rulebook.RuleBook;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;

/** One phone valued at one set of figures. */
final class Valuation {
    private final RepairCosts costs;
    private final Function<Bench, Routes> routes;
    private final Map<Integer, List<List<Routes.Group>>> only;
    private final boolean returnable;
    private final Bench now;
    private final Map<Integer, Menu> menus = new HashMap<>();

    private Valuation(
            Subject subject, RepairCosts costs, Shop.Model model, Map<Integer, List<List<Routes.Group>>> only) {
        this.costs = costs;
        this.routes = bench -> new Routes(subject.rules(), costs, model, subject.diagnosis(), bench);
        this.returnable = subject.returnable();
        this.only = only;
        this.now = subject.now();
    }

    /** A phone, and what is known of it. */
    record Subject(RuleBook rules, Phone phone, Diagnosis diagnosis, Bench now, boolean returnable) {
        /** Every combination of what is at stake most may be repaired. */
        Valuation at(PriceBook prices, Shop shop, Shop.Model model) {
            return at(prices, shop, model, Map.of());
        }

        /** @param repairs the repairs that may be made, by how far work has gone; where nothing is said, every one */
        Valuation at(PriceBook prices, Shop shop, Shop.Model model, Map<Integer, List<List<Routes.Group>>> repairs) {
            return new Valuation(this, new RepairCosts(rules, prices, shop, phone), model, repairs);
        }

        Ways ways() {
            return now.ways();
        }
    }

    /** What can be done with the phone when work has gone so far. */
    private record Menu(Routes routes, List<Repair> repairs, List<Choice> choices) {
        /** The repair that is expected to bring most, by these chances. */
        Repair best(double[] chances) {
            Choice best =
                    new State(chances, repairs.stream().map(Repair::choice).toList()).best(0);
            return repairs.stream()
                    .filter(r -> r.choice().equals(best))
                    .findFirst()
                    .orElseThrow();
        }
    }

    private Menu menu(int number, Bench bench) {
        Menu known = menus.get(number);
        if (known == null) {
            Routes at = routes.apply(bench);
            List<List<Routes.Group>> own = only.get(number);
            List<Repair> repairs =
                    own == null ? at.repairs() : own.stream().map(at::repair).toList();
            known = new Menu(
                    at,
                    repairs,
                    Stream.concat(repairs.stream().map(Repair::choice), at.others(returnable).stream())
                            .toList());
            menus.put(number, known);
        }
        return known;
    }

    private Menu menu() {
        return menu(Knowledge.UNTOUCHED, now);
    }

    private Menu menu(Knowledge knowledge, int number) {
        return number == Knowledge.UNTOUCHED
                ? menu()
                : menu(number, knowledge.benches().get(number));
    }

    /** @param bench how far work has gone; within a valuation the same number stands for the same */
    State state(Knowledge.Outcome known, Bench bench) {
        return new State(known.chances(), menu(known.bench(), bench).choices(), known.spent());
    }

    RepairCosts costs() {
        return costs;
    }

    /** What can be done with the phone as it is now. */
    List<Choice> choices() {
        return menu().choices();
    }

    /** The repair of the phone as it is now that is expected to bring most, by these chances. */
    Repair bestRepair(double[] chances) {
        return menu().best(chances);
    }

    /** The repairs that are best in some state, by how far work has gone. */
    Map<Integer, List<Repair>> bestRepairs(Knowledge knowledge) {
        Map<Integer, List<Repair>> best = new LinkedHashMap<>();
        for (Knowledge.Outcome outcome : knowledge.outcomes()) {
            Repair repair = menu(knowledge, outcome.bench()).best(outcome.chances());
            List<Repair> made = best.computeIfAbsent(outcome.bench(), b -> new ArrayList<>());
            if (!made.contains(repair)) {
                made.add(repair);
            }
        }
        return best;
    }

    Deal deal(Knowledge knowledge) {
        Shop.Buying buying = costs.shop().buying();
        return new Deal(
                knowledge.states(bench -> menu(knowledge, bench).choices()),
                buying.importTax(),
                buying.shippingIn().getAmountMinorLong(),
                buying.margin().getAmountMinorLong());
    }
}
