package hingewise.decision;

import java.util.List;

/**
 * A decision that ends the case.
 *
 * @param cost paid in any state, opening not included; not below 0
 * @param opens gates (one bit each) that must be open for it; those that are not are opened at their price
 * @param covers causes (one bit each) that it puts right, or that are no longer a concern
 * @param concern share of cases in which what it does not cover is a concern, in 0–1
 * @param losses what takes off the worth of this decision, covered or not
 * @param unopened whether it is possible only as long as nothing was opened
 */
public record Ending(
        String id, double cost, long opens, long covers, double concern, List<Loss> losses, boolean unopened) {
    public Ending {
        losses = List.copyOf(losses);
    }

    /** One whose worth no cause takes anything off. */
    public Ending(String id, double cost, long opens, long covers, boolean unopened) {
        this(id, cost, opens, covers, 1, List.of(), unopened);
    }

    /** One that costs the same whatever is the matter. */
    public static Ending flat(String id, double cost, boolean unopened) {
        return new Ending(id, cost, 0, -1L, unopened);
    }

    /** How far the cheapest of these costs less than nothing; 0 if none does. */
    public static double below(List<Ending> endings) {
        return Math.min(0, endings.stream().mapToDouble(Ending::cost).min().orElse(0));
    }

    /** The same decisions, their costs counted from the cheapest where that costs less than nothing. */
    public static List<Ending> fromNothing(List<Ending> endings) {
        double below = below(endings);
        return endings.stream()
                .map(e -> new Ending(e.id, e.cost - below, e.opens, e.covers, e.concern, e.losses, e.unopened))
                .toList();
    }

    /**
     * Lost once if any of these causes (one bit each) is there.
     *
     * @param amount not below 0
     */
    public record Loss(long causes, double amount) {}
}
