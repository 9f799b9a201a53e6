package hingewise.decision;

/**
 * A decision that ends the case.
 *
 * @param cost paid in any state, opening not included
 * @param opens gates (one bit each) that must be open for it; those that are not are opened at their price
 * @param covers causes (one bit each) that it puts right
 * @param unopened whether it is possible only as long as nothing was opened
 */
public record Ending(String id, double cost, long opens, long covers, boolean unopened) {
    /** One that costs the same whatever is the matter. */
    public static Ending flat(String id, double cost, boolean unopened) {
        return new Ending(id, cost, 0, -1L, unopened);
    }
}
