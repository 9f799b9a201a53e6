package hingewise.assessment;

import hingewise.casefile.CaseFile;
import hingewise.costing.OrderLine;
import hingewise.costing.PartsChooser;
import hingewise.costing.PartsList;
import hingewise.costing.PriceBook;
import hingewise.costing.RepairCosts;
import hingewise.costing.Shop;
import hingewise.diagnosis.Diagnosis;
import hingewise.diagnosis.Diagnostician;
import hingewise.diagnosis.Reading;
import hingewise.planning.FirstSteps;
import hingewise.planning.Step;
import hingewise.rulebook.Caution;
import hingewise.rulebook.Confirmation;
import hingewise.rulebook.Observation;
import hingewise.rulebook.RuleBook;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Answers a case in one pass, the same for the window, the terminal and the documents. */
public final class Assessor {
    /** Cautions of what is proposed are shown for as many saving steps as a person will look at. */
    private static final int STEPS_LOOKED_AT = 5;

    private final RuleBook rules;
    private final PriceBook prices;
    private final Shop shop;

    public Assessor(RuleBook rules, PriceBook prices, Shop shop) {
        this.rules = rules;
        this.prices = prices;
        this.shop = shop;
    }

    public RuleBook rules() {
        return rules;
    }

    /**
     * @throws hingewise.diagnosis.CaseException if the case names something the rule book lacks
     * @throws hingewise.inference.CliqueLimitException if the evidence couples too much to be solved exactly
     * @throws hingewise.costing.MixedCurrencyException if an amount is in a currency for which the shop has no rate
     */
    public Assessment assess(CaseFile file) {
        RuleBook own = rules.of(file.phone().family());
        return own == rules ? assessed(file) : new Assessor(own, prices, shop).assessed(file);
    }

    private Assessment assessed(CaseFile file) {
        Diagnosis diagnosis = new Diagnostician(rules).diagnose(file);
        String family = file.phone().family();
        RepairCosts costs = new RepairCosts(rules, prices, shop, file.phone());
        PartsList parts = new PartsChooser(rules, costs).choose(diagnosis);
        List<Step> steps = new FirstSteps(rules, costs, family, diagnosis).ranked();
        List<ShownCaution> cautions = cautions(diagnosis, steps, parts.order());
        if (cautions.stream().anyMatch(ShownCaution::stops)) {
            steps = steps.stream()
                    .filter(s -> s.confirmation().kind() == Confirmation.Kind.QUESTION)
                    .toList();
            parts = PartsList.NOTHING;
        }
        return new Assessment(
                file,
                diagnosis,
                steps,
                parts,
                cautions,
                untested(family, diagnosis),
                FunctionRound.left(rules, family, diagnosis.readings()));
    }

    private List<ShownCaution> cautions(Diagnosis diagnosis, List<Step> steps, List<OrderLine> parts) {
        Set<String> seen = diagnosis.readings().used().stream()
                .filter(Reading::yes)
                .map(r -> r.observation().id())
                .collect(Collectors.toSet());
        List<Step> looked = steps.stream()
                .filter(s -> s.saves().isPositive())
                .limit(STEPS_LOOKED_AT)
                .toList();
        Set<String> opened = Stream.concat(
                        looked.stream().flatMap(s -> s.opens().stream()),
                        parts.stream()
                                .flatMap(p -> rules.pathTo(p.part().access()).stream())
                                .map(a -> a.id()))
                .collect(Collectors.toSet());
        Set<String> carried = Stream.concat(
                        looked.stream().flatMap(s -> s.confirmation().cautions().stream()),
                        opened.stream()
                                .map(rules.access()::get)
                                .flatMap(a -> a == null ? Stream.<String>empty() : a.cautions().stream()))
                .collect(Collectors.toSet());
        return rules.cautions().values().stream()
                .filter(c -> brought(c, seen, diagnosis)
                        || carried.contains(c.id())
                        || c.access().stream().anyMatch(opened::contains))
                .map(c -> new ShownCaution(c, c.stops() && brought(c, seen, diagnosis)))
                .sorted(Comparator.comparing(c -> !c.stops()))
                .toList();
    }

    private static boolean brought(Caution caution, Set<String> seen, Diagnosis diagnosis) {
        return caution.observations().stream().anyMatch(seen::contains)
                || caution.causes().entrySet().stream().anyMatch(e -> diagnosis.chanceOf(e.getKey()) >= e.getValue());
    }

    private List<Observation> untested(String family, Diagnosis diagnosis) {
        Map<String, Boolean> latest = diagnosis.readings().latest();
        return rules.observationsOf(family).stream()
                .filter(o -> !latest.containsKey(o.id()))
                .filter(o -> o.askable(latest))
                .toList();
    }
}
