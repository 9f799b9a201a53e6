package hingewise.offer;

import hingewise.costing.RepairCosts;
import hingewise.diagnosis.Diagnosis;
import hingewise.rulebook.Confirmation;
import hingewise.rulebook.EvidenceKind;
import hingewise.rulebook.Moment;
import hingewise.rulebook.Observation;
import hingewise.rulebook.RuleBook;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.joda.money.Money;

/**
 * What can be found out on the desk, before the phone is opened or a route is chosen. Looks are added one after the
 * other, each the one that raises the expected profit most after its cost, as long as one does and at most three.
 */
final class Looks {
    private static final int MOST = 3;

    private final RuleBook rules;
    private final RepairCosts costs;
    private final Diagnosis diagnosis;
    private final Ways ways;

    Looks(RuleBook rules, RepairCosts costs, Diagnosis diagnosis, Ways ways) {
        this.rules = rules;
        this.costs = costs;
        this.diagnosis = diagnosis;
        this.ways = ways;
    }

    /** @param yes the chance that it says yes, by way */
    private record Look(Confirmation confirmation, double[] yes, long cost) {}

    /**
     * The knowledge that is worth its cost.
     *
     * @param price of the phone, for routes that give it back
     */
    Knowledge worthLooking(List<Choice> choices, long price) {
        Knowledge knowledge = Knowledge.none(ways.weights());
        List<Look> left = new ArrayList<>(looks());
        for (int i = 0; i < MOST; i++) {
            double best = value(knowledge, choices, price);
            Optional<Look> found = Optional.empty();
            for (Look look : left) {
                double value = value(with(knowledge, look), choices, price);
                if (value > best) {
                    best = value;
                    found = Optional.of(look);
                }
            }
            if (found.isEmpty()) {
                return knowledge;
            }
            knowledge = with(knowledge, found.get());
            Confirmation taken = found.get().confirmation();
            left.removeIf(l -> l.confirmation().equals(taken));
        }
        return knowledge;
    }

    private static Knowledge with(Knowledge knowledge, Look look) {
        return knowledge.with(look.confirmation().label(), look.yes(), look.cost());
    }

    private static double value(Knowledge knowledge, List<Choice> choices, long price) {
        return knowledge.states(choices).stream()
                .mapToDouble(s -> s.expected(price))
                .sum();
    }

    private List<Look> looks() {
        List<Look> looks = new ArrayList<>();
        rules.confirmations().values().stream()
                .filter(c -> c.kind() == Confirmation.Kind.CHECK)
                .filter(c ->
                        c.families().contains(costs.family()) && c.moments().contains(Moment.ARRIVAL))
                .filter(c -> c.possible(diagnosis.readings().latest()))
                .filter(c ->
                        costs.stepsTo(c.access(), diagnosis.readings().open()).isEmpty())
                .forEach(c -> c.settles().stream()
                        .flatMap(o -> Optional.ofNullable(rules.observations().get(o)).stream())
                        .filter(o -> o.families().contains(costs.family()))
                        .flatMap(o -> look(c, o).stream())
                        .forEach(looks::add));
        return looks;
    }

    private Optional<Look> look(Confirmation c, Observation o) {
        return ways.saysYes(o, EvidenceKind.LOOK).map(yes -> new Look(c, yes, cost(c)));
    }

    /** Money, minutes, and what it may break. */
    private long cost(Confirmation c) {
        Money cost = costs.money(c.cost()).plus(costs.labour(c.minutes()));
        double damage = c.damages().entrySet().stream()
                .mapToDouble(d -> d.getValue()
                        * (1 - diagnosis.chanceOf(d.getKey()))
                        * Optional.ofNullable(rules.causes().get(d.getKey()))
                                .flatMap(cause -> costs.toRenew(cause.component()))
                                .orElse(costs.priceOfFailure())
                                .getAmountMinorLong())
                .sum();
        return cost.getAmountMinorLong() + Math.round(damage);
    }
}
