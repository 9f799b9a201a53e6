package hingewise.planning;

import hingewise.decision.Ending;
import hingewise.rulebook.Cause;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * The ways to end a case, in terms of the planner.
 *
 * @param causes those that are weighed, by number
 * @param opened what a working phone brings less because it was opened
 */
record Endings(List<Cause> causes, double opened) {
    Endings {
        causes = List.copyOf(causes);
    }

    /**
     * Selling it as working; for less once it was opened.
     *
     * @param opens gates (one bit each) that must be open for what is fitted
     * @param covers causes (one bit each) that this puts right
     */
    List<Ending> sold(double cost, long opens, long covers) {
        Ending any = new Ending("", cost + opened, opens, covers, false);
        return opened > 0 && opens == 0 ? List.of(new Ending("", cost, opens, covers, true), any) : List.of(any);
    }

    Ending of(Alternative a) {
        return new Ending(
                "",
                Reckoning.amount(a.cost()),
                0,
                a.leavesNothing() ? -1L : of(a.mends()),
                a.concern(),
                a.less().stream()
                        .map(l -> new Ending.Loss(of(l.components()), Reckoning.amount(l.amount())))
                        .filter(l -> l.causes() != 0)
                        .toList(),
                a.unopened());
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
