package hingewise.assessment;

import hingewise.casefile.CaseFile;
import hingewise.costing.OrderLine;
import hingewise.costing.PartsChooser;
import hingewise.costing.PartsList;
import hingewise.costing.PriceBook;
import hingewise.costing.RepairCosts;
import hingewise.costing.Shop;
import hingewise.costing.Terms;
import hingewise.diagnosis.Diagnosis;
import hingewise.diagnosis.Diagnostician;
import hingewise.offer.Appraisal;
import hingewise.offer.Appraiser;
import hingewise.planning.Plan;
import hingewise.planning.Planning;
import hingewise.rulebook.Caution;
import hingewise.rulebook.Confirmation;
import hingewise.rulebook.Observation;
import hingewise.rulebook.RuleBook;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.joda.money.Money;

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

    /** The shop's own figures. */
    public Shop shop() {
        return shop;
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
        List<Caution> brought = Cautions.broughtBy(rules, diagnosis);
        boolean stops = brought.stream().anyMatch(Caution::stops);
        if (stops) {
            parts = PartsList.NOTHING;
        }
        Plan plan = new Planning(
                        rules, costs, diagnosis, Terms.of(file, shop), stops ? Assessor::whileStopped : c -> true)
                .plan();
        List<ShownCaution> cautions = cautions(brought, plan, parts.order());
        return new Assessment(
                file,
                diagnosis,
                plan,
                parts,
                cautions,
                untested(family, diagnosis),
                FunctionRound.left(rules, family, diagnosis.readings()));
    }

    /**
     * The money of an assessed case: what may be paid for the phone, and how its routes compare. It takes longer than all
     * the rest, so it is asked for by itself.
     *
     * @param asked what is asked for the phone; if it is empty, what its case says was paid, or else was asked
     * @throws hingewise.costing.MixedCurrencyException if an amount is in a currency for which the shop has no rate
     */
    public Appraisal appraise(Assessment assessment, Optional<Money> asked) {
        return new Appraiser(rules, prices, shop)
                .appraise(assessment.file(), assessment.diagnosis(), asked, assessment.stopped());
    }

    /**
     * The sheet of an assessed case, to work by at the bench. It takes longer than all the rest, so it is asked for by
     * itself.
     *
     * @throws hingewise.costing.MixedCurrencyException if an amount is in a currency for which the shop has no rate
     */
    public BenchSheet sheet(Assessment assessment) {
        RuleBook own = rules.of(assessment.file().phone().family());
        if (assessment.stopped()) {
            return BenchSheet.stopped(assessment);
        }
        RepairCosts costs = new RepairCosts(own, prices, shop, assessment.file().phone());
        Terms terms = Terms.of(assessment.file(), shop);
        return BenchSheet.of(
                own, assessment, new SheetPlanner(own, costs, terms).sheet(assessment.file(), assessment.diagnosis()));
    }

    /** While work stops it may be asked about, but nobody is asked to move the phone. */
    private static boolean whileStopped(Confirmation c) {
        return c.kind() == Confirmation.Kind.QUESTION && c.damages().isEmpty();
    }

    /** What the case itself brings up before what comes with the proposals, and what stops the work before all else. */
    private List<ShownCaution> cautions(List<Caution> brought, Plan plan, List<OrderLine> parts) {
        Stream<Caution> carried = Stream.concat(
                plan.worthDoing().stream().limit(STEPS_LOOKED_AT).flatMap(s -> Cautions.of(rules, s).stream()),
                parts.stream().flatMap(p -> Cautions.of(rules, p).stream()));
        Set<Caution> all = new LinkedHashSet<>(brought);
        carried.forEach(all::add);
        return all.stream()
                .map(c -> new ShownCaution(c, c.stops() && brought.contains(c), brought.contains(c)))
                .sorted(Comparator.comparing((ShownCaution c) -> !c.stops()).thenComparing(c -> !c.brought()))
                .toList();
    }

    private List<Observation> untested(String family, Diagnosis diagnosis) {
        Map<String, Boolean> latest = diagnosis.readings().latest();
        return rules.observationsOf(family).stream()
                .filter(o -> !latest.containsKey(o.id()))
                .filter(o -> o.askable(latest))
                .toList();
    }
}
