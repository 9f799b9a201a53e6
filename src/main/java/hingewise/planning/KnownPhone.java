package hingewise.planning;

import hingewise.costing.RepairCosts;
import hingewise.decision.Act;
import hingewise.decision.Cure;
import hingewise.decision.Ending;
import hingewise.decision.Gate;
import hingewise.decision.Problem;
import hingewise.rulebook.Access;
import hingewise.rulebook.Cause;
import hingewise.rulebook.Confirmation;
import hingewise.rulebook.RuleBook;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/** A case of which it is known what is there: what to try, and which parts to fit. */
final class KnownPhone {
    /** Of more broken components not every choice of some to renew is weighed. */
    private static final int WEIGHED = 6;

    private final RepairCosts costs;
    private final Packages packages;
    private final List<Cause> present;
    private final List<Access> gates = new ArrayList<>();
    private final List<Ending> endings = new ArrayList<>();
    private final List<Act> acts;

    /**
     * @param present the causes that count and are there
     * @param opened what having been opened takes off the price
     */
    KnownPhone(
            RuleBook rules,
            RepairCosts costs,
            Packages packages,
            List<Alternative> alternatives,
            List<Cause> present,
            double opened) {
        this.costs = costs;
        this.packages = packages;
        this.present = present;
        this.acts = rules.confirmations().values().stream()
                .filter(c -> c.families().contains(costs.family()))
                .filter(c -> present.stream().anyMatch(x -> c.cures().containsKey(x.id())))
                .limit(Problem.MOST_ACTS)
                .map(this::act)
                .toList();
        Endings ways = Endings.of(present, opened, packages, costs);
        endings.addAll(ways.sold(0, 0, 0));
        for (Set<String> some :
                choices(present.stream().map(Cause::component).distinct().toList())) {
            Packages.Package p = packages.of(some);
            if (!p.parts().isEmpty()) {
                endings.addAll(ways.sold(Reckoning.amount(p.cost()), gates(p.opens()), ways.bits(p.causes())));
            }
        }
        alternatives.forEach(a -> endings.add(ways.of(a)));
    }

    /** Of some components every choice but none; of very many only all, and all but each one. */
    private static List<Set<String>> choices(List<String> broken) {
        List<Set<String>> choices = new ArrayList<>();
        int n = broken.size();
        if (n <= WEIGHED) {
            for (int some = 1; some < 1 << n; some++) {
                Set<String> choice = new LinkedHashSet<>();
                for (int i = 0; i < n; i++) {
                    if ((some >>> i & 1) != 0) {
                        choice.add(broken.get(i));
                    }
                }
                choices.add(choice);
            }
            return choices;
        }
        choices.add(new LinkedHashSet<>(broken));
        for (String without : broken) {
            Set<String> choice = new LinkedHashSet<>(broken);
            choice.remove(without);
            choices.add(choice);
        }
        return choices;
    }

    Problem problem() {
        return new Problem(
                present.isEmpty() ? 0 : -1L >>> 64 - present.size(),
                Reckoning.amount(costs.priceOfFailure()),
                present.stream().map(c -> Reckoning.amount(packages.later(c))).toList(),
                0,
                gates.stream().map(this::gate).toList(),
                acts,
                Ending.fromNothing(endings));
    }

    /** What the cheapest decision costs, where that is less than nothing: the problem counts from there. */
    double below() {
        return Ending.below(endings);
    }

    private Act act(Confirmation c) {
        List<Access> path = costs.stepsTo(c.access(), Set.of());
        return new Act(
                c.id(),
                Reckoning.amount(costs.money(c.cost()).plus(costs.labour(c.minutes()))),
                path.isEmpty()
                        ? Gate.NONE
                        : Long.numberOfTrailingZeros(gates(path.subList(path.size() - 1, path.size()))),
                List.of(),
                List.of(),
                IntStream.range(0, present.size())
                        .filter(i -> c.cures().containsKey(present.get(i).id()))
                        .mapToObj(i -> new Cure(
                                i, c.cures().getOrDefault(present.get(i).id(), 0.0)))
                        .toList(),
                List.of());
    }

    private Gate gate(Access access) {
        return new Gate(
                access.parent()
                        .map(p -> gates.stream().map(Access::id).toList().indexOf(p))
                        .filter(g -> g >= 0)
                        .orElse(Gate.NONE),
                Reckoning.amount(costs.opening(access)),
                List.of(),
                true);
    }

    /** One bit each; the way to each is a gate too. */
    private long gates(Collection<Access> some) {
        long bits = 0;
        for (Access access : some) {
            for (Access step : costs.stepsTo(Optional.of(access.id()), Set.of())) {
                if (!gates.contains(step)) {
                    gates.add(step);
                }
            }
            bits |= 1L << gates.indexOf(access);
        }
        return bits;
    }
}
