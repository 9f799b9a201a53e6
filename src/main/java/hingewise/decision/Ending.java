package hingewise.decision;

import java.util.List;

/**
 * A decision that ends the case.
 *
 * @param cost paid in any state, opening not included
 * @param opens gates (one bit each) that must be open for it; those that are not are opened at their price
 * @param covers causes (one bit each) that it puts right, or that are no longer a concern
 * @param less what each cause takes off the worth of this decision, by number, covered or not; empty for nothing
 * @param unopened whether it is possible only as long as nothing was opened
 */
public record Ending(String id, double cost, long opens, long covers, List<Double> less, boolean unopened) {
    public Ending {
        less = List.copyOf(less);
    }

    /** One whose worth no cause takes anything off. */
    public Ending(String id, double cost, long opens, long covers, boolean unopened) {
        this(id, cost, opens, covers, List.of(), unopened);
    }

    /** One that costs the same whatever is the matter. */
    public static Ending flat(String id, double cost, boolean unopened) {
        return new Ending(id, cost, 0, -1L, unopened);
    }
}
