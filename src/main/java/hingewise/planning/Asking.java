package hingewise.planning;

import hingewise.costing.RepairCosts;
import hingewise.diagnosis.Diagnosis;
import hingewise.rulebook.Access;
import hingewise.rulebook.Confirmation;
import hingewise.rulebook.Moment;
import hingewise.rulebook.Observation;
import hingewise.rulebook.RuleBook;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What must be answered before something is done or opened. A recorded answer allows or forbids; what nobody has answered
 * is asked first.
 */
final class Asking {
    private final RuleBook rules;
    private final RepairCosts costs;
    private final Map<String, Boolean> answered;
    private final Set<String> open;

    Asking(RuleBook rules, RepairCosts costs, Diagnosis diagnosis) {
        this.rules = rules;
        this.costs = costs;
        this.answered = diagnosis.readings().latest();
        this.open = diagnosis.readings().open();
    }

    /** Whether the answers allow a confirmation and all that must be opened for it. */
    boolean possible(Confirmation c) {
        return rules.possible(c, answered, open);
    }

    /** Whether the answers allow these steps of opening. */
    boolean possible(Collection<Access> steps) {
        return steps.stream().allMatch(a -> rules.possible(a.needs(), answered));
    }

    /** What must be answered before a confirmation and is not; what must be before opening comes first. */
    List<Sheet.Need> needs(Confirmation c) {
        Map<String, Boolean> needs = together(costs.stepsTo(c.access(), open));
        needs.putAll(c.needs());
        return unanswered(needs);
    }

    /** What must be answered before these steps of opening and is not. */
    List<Sheet.Need> needs(Collection<Access> steps) {
        return unanswered(together(steps));
    }

    /** What must be answered before what a decision opens and is not. */
    List<Sheet.Need> needs(Decision decision) {
        return needs(
                decision.kind() == Decision.Kind.BREAK
                        ? closed()
                        : decision.parts().stream()
                                .flatMap(p -> costs.stepsTo(p.access(), open).stream())
                                .toList());
    }

    /** All that can still be opened. */
    List<Access> closed() {
        return rules.access().values().stream()
                .filter(a -> a.families().contains(costs.family()) && !open.contains(a.id()))
                .toList();
    }

    /** The checks that can be made at these moments and answer this from outside, harming nothing. */
    Stream<Confirmation> checks(Observation observation, Set<Moment> now) {
        return rules.confirmations().values().stream()
                .filter(c -> c.kind() == Confirmation.Kind.CHECK && c.settles().contains(observation.id()))
                .filter(c -> c.families().contains(costs.family()))
                .filter(c -> c.moments().stream().anyMatch(now::contains))
                .filter(c ->
                        c.damages().isEmpty() && costs.stepsTo(c.access(), open).isEmpty())
                .filter(c -> possible(c) && needs(c).isEmpty());
    }

    /**
     * Whether most functions that presuppose anything can be tested.
     *
     * @param further answers beside those that are recorded, by id
     */
    boolean testable(Map<String, Boolean> further) {
        Map<String, Boolean> all = new HashMap<>(answered);
        all.putAll(further);
        List<Observation> round = rules.observationsOf(costs.family()).stream()
                .filter(o ->
                        o.moments().contains(Moment.AFTER_REPAIR) && !o.needs().isEmpty())
                .toList();
        return 2 * round.stream().filter(o -> o.askable(all)).count() >= round.size();
    }

    private static Map<String, Boolean> together(Collection<Access> steps) {
        Map<String, Boolean> needs = new LinkedHashMap<>();
        steps.forEach(a -> needs.putAll(a.needs()));
        return needs;
    }

    private List<Sheet.Need> unanswered(Map<String, Boolean> needs) {
        return rules.unanswered(needs, answered).entrySet().stream()
                .flatMap(n -> Optional.ofNullable(rules.observations().get(n.getKey())).stream()
                        .map(o -> new Sheet.Need(o, n.getValue())))
                .toList();
    }
}
