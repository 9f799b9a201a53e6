package hingewise.offer;

import hingewise.costing.RepairCosts;
import hingewise.diagnosis.Diagnosis;
import hingewise.diagnosis.PossiblePhones;
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

    /**
     * Something to look at.
     *
     * @param yes the chance that it says yes, by way
     * @param cost in minor units
     */
    record Look(Confirmation confirmation, Observation observation, double[] yes, long cost) {
        private Knowledge after(Knowledge before) {
            return before.with(confirmation.label(), yes, cost);
        }

        /** The same as it reads otherwise. */
        Look reading(double[] otherwise) {
            return new Look(confirmation, observation, otherwise, cost);
        }
    }

    /** What is known after looks. */
    static Knowledge knowledge(double[] chances, List<Look> looks) {
        Knowledge knowledge = Knowledge.none(chances);
        for (Look look : looks) {
            knowledge = look.after(knowledge);
        }
        return knowledge;
    }

    /**
     * The looks that are worth their cost, the one that tells most first.
     *
     * @param price of the phone, for routes that give it back
     */
    List<Look> worthLooking(List<Choice> choices, long price) {
        Knowledge knowledge = Knowledge.none(ways.weights());
        List<Look> taken = new ArrayList<>();
        List<Look> left = new ArrayList<>(looks());
        for (int i = 0; i < MOST; i++) {
            double best = value(knowledge, choices, price);
            Optional<Look> found = Optional.empty();
            for (Look look : left) {
                double value = value(look.after(knowledge), choices, price);
                if (value > best) {
                    best = value;
                    found = Optional.of(look);
                }
            }
            if (found.isEmpty()) {
                return taken;
            }
            Look look = found.get();
            knowledge = look.after(knowledge);
            taken.add(look);
            left.removeIf(l -> l.confirmation().equals(look.confirmation()));
        }
        return taken;
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
                .filter(c -> rules.possible(
                        c, diagnosis.readings().latest(), diagnosis.readings().open()))
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
        return ways.reports(o, PossiblePhones.look(o, EvidenceKind.LOOK)).map(yes -> new Look(c, o, yes, cost(c)));
    }

    /** Money, minutes, and what it may break. */
    private long cost(Confirmation c) {
        Money cost = costs.money(c.cost()).plus(costs.labour(c.minutes()));
        double damage = c.damages().causes().stream()
                .mapToDouble(d -> ways.chance(d, c.damages().to(d))
                        * (1 - diagnosis.chanceOf(d))
                        * Optional.ofNullable(rules.causes().get(d))
                                .flatMap(cause -> costs.toRenew(cause.component()))
                                .orElse(costs.priceOfFailure())
                                .getAmountMinorLong())
                .sum();
        return cost.getAmountMinorLong() + Math.round(damage);
    }
}
