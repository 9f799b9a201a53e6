package hingewise.planning;

import hingewise.costing.RepairCosts;
import hingewise.decision.Ending;
import hingewise.rulebook.Cause;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * The ways to end a case, in terms of the planner.
 *
 * @param causes those that are weighed, by number
 * @param opened what a working phone brings less because it was opened
 * @param later what must be opened to put right later what is left now
 */
record Endings(List<Cause> causes, double opened, List<Ending.Loss> later) {
    Endings {
        causes = List.copyOf(causes);
        later = List.copyOf(later);
    }

    /** Those of some repairs. */
    static Endings of(List<Cause> causes, double opened, Packages repairs, RepairCosts costs) {
        Endings ways = new Endings(causes, opened, List.of());
        return new Endings(
                causes,
                opened,
                repairs.openedLater().entrySet().stream()
                        .map(e -> new Ending.Loss(
                                ways.bits(e.getValue().stream().map(Cause::id).toList()),
                                Reckoning.amount(costs.opening(e.getKey()))))
                        .filter(l -> l.causes() != 0)
                        .toList());
    }

    /**
     * Selling it as working; for less once it was opened, be it to put right later what is left.
     *
     * @param opens gates (one bit each) that must be open for what is fitted
     * @param covers causes (one bit each) that this puts right
     */
    List<Ending> sold(double cost, long opens, long covers) {
        List<Ending.Loss> left = left(covers, 1);
        Ending any = new Ending("", cost + opened, opens, covers, 1, left, false);
        if (opened == 0 || opens != 0) {
            return List.of(any);
        }
        long inside = left.stream().mapToLong(Ending.Loss::causes).reduce(0, (a, b) -> a | b);
        List<Ending.Loss> more = new ArrayList<>(left);
        more.add(new Ending.Loss(inside, opened));
        return List.of(new Ending("", cost, opens, covers, 1, more, true), any);
    }

    Ending of(Alternative a) {
        long covers = a.leavesNothing() ? -1L : of(a.mends());
        List<Ending.Loss> losses = new ArrayList<>(left(covers, a.concern()));
        a.less().stream()
                .map(l -> new Ending.Loss(of(l.components()), Reckoning.amount(l.amount())))
                .filter(l -> l.causes() != 0)
                .forEach(losses::add);
        return new Ending("", Reckoning.amount(a.cost()), 0, covers, a.concern(), losses, a.unopened());
    }

    /** @param concern share of cases in which what is left is put right later */
    private List<Ending.Loss> left(long covers, double concern) {
        return later.stream()
                .filter(l -> (l.causes() & ~covers) != 0)
                .map(l -> new Ending.Loss(l.causes() & ~covers, l.amount() * concern))
                .toList();
    }

    /** The causes (one bit each) of these components. */
    private long of(Set<String> components) {
        return bits(causes.stream()
                .filter(c -> components.contains(c.component()))
                .map(Cause::id)
                .toList());
    }

    /** The causes of these ids, one bit each. */
    long bits(Collection<String> ids) {
        return IntStream.range(0, causes.size())
                .filter(i -> ids.contains(causes.get(i).id()))
                .mapToLong(i -> 1L << i)
                .reduce(0, (a, b) -> a | b);
    }
}
