package hingewise.planning;

import hingewise.costing.RepairCosts;
import hingewise.decision.Harm;
import hingewise.diagnosis.Diagnosis;
import hingewise.diagnosis.PossiblePhones;
import hingewise.rulebook.Cause;
import hingewise.rulebook.Damage;
import hingewise.rulebook.Damages;
import hingewise.rulebook.RuleBook;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * What acts and openings may bring about, as a plan counts it. A cause that counts comes to be there in the phones it is
 * drawn for; one that does not costs its repair at once, by the chance it has now.
 */
final class Risks {
    private final RuleBook rules;
    private final RepairCosts costs;
    private final Diagnosis diagnosis;
    private final PossiblePhones phones;
    private final Map<String, Integer> counted;

    /** @param counted numbers of the causes that count, by id */
    Risks(RuleBook rules, RepairCosts costs, Diagnosis diagnosis, PossiblePhones phones, Map<String, Integer> counted) {
        this.rules = rules;
        this.costs = costs;
        this.diagnosis = diagnosis;
        this.phones = phones;
        this.counted = counted;
    }

    /** What may be brought about of what counts. */
    List<Harm> harms(Damages damages) {
        List<Harm> harms = new ArrayList<>();
        for (String cause : damages.causes()) {
            if (counted.containsKey(cause)) {
                harms.addAll(harms(cause, damages.to(cause)));
            }
        }
        return harms;
    }

    /** What counts is looked at phone by phone; of what does not, how often it is present in the phones at risk is. */
    private List<Harm> harms(String cause, Damage damage) {
        List<Harm> harms = new ArrayList<>();
        if (damage.always() > 0) {
            harms.add(new Harm(number(cause), damage.always(), 0));
        }
        damage.where().forEach((state, chance) -> {
            if (counted.containsKey(state)) {
                harms.add(new Harm(number(cause), chance, 1L << number(state)));
            } else {
                harms.add(new Harm(number(cause), chance * share(state, cause), 0));
            }
        });
        return harms;
    }

    private int number(String cause) {
        return Objects.requireNonNull(counted.get(cause));
    }

    /** How often a cause is present in phones without another one. */
    private double share(String present, String absent) {
        BitSet both = (BitSet) phones.with(present).clone();
        both.andNot(phones.with(absent));
        int without = phones.count() - phones.with(absent).cardinality();
        return without == 0 ? 0 : (double) both.cardinality() / without;
    }

    /** What bringing about causes that do not count is expected to cost, in the bench's currency. */
    double uncounted(Damages damages) {
        double cost = 0;
        for (String id : damages.causes()) {
            Cause cause = rules.causes().get(id);
            if (cause != null && !counted.containsKey(id)) {
                double repair = costs.toRenew(cause.component())
                        .or(() -> Optional.of(costs.priceOfFailure()))
                        .map(Reckoning::amount)
                        .orElse(0.0);
                cost += chance(id, damages.to(id)) * (1 - diagnosis.chanceOf(id)) * repair;
            }
        }
        return cost;
    }

    /** The chance that a cause is brought about in a phone without it. */
    private double chance(String cause, Damage damage) {
        BitSet with = phones.with(cause);
        return damage.where().isEmpty()
                ? damage.always()
                : IntStream.range(0, phones.count())
                        .filter(p -> !with.get(p))
                        .mapToDouble(p -> damage.chance(s -> phones.with(s).get(p)))
                        .average()
                        .orElse(0);
    }
}
