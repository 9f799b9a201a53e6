package hingewise.offer;

import hingewise.costing.Purchase;
import hingewise.rulebook.Confirmation;
import java.util.List;

/**
 * A repair that may be committed to.
 *
 * @param groups what it is made of
 * @param purchase the parts
 * @param cost what it costs, by way the phone may be, in minor units: parts, work, and what is left behind
 * @param choice what comes of it
 */
record Repair(List<Routes.Group> groups, Purchase purchase, long[] cost, Choice choice) {
    Repair {
        groups = List.copyOf(groups);
    }

    /** Tries, done before anything is fitted. */
    List<Confirmation> tries() {
        return groups.stream().flatMap(g -> g.attempt().stream()).toList();
    }
}
