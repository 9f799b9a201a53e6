package hingewise.offer;

import java.util.List;
import java.util.Optional;
import org.joda.money.Money;

/**
 * The money of a case.
 *
 * @param offerCeiling the most to pay so that the expected profit meets the margin and the chance of loss the limit; empty
 *     where no price is low enough
 * @param bracket the most to pay by expected profit alone
 * @param lossCeiling the most to pay by chance of loss alone; empty where no price is low enough
 * @param lossLimit the shop's limit, in 0–1
 * @param error standard error of the most to pay, from drawing phones instead of weighing all there may be
 * @param price the price of the phone that routes are compared at: what was paid or is asked, or the most to pay
 * @param asked whether it is asked for
 * @param paid whether it was paid
 * @param repairCost what repairing here costs, price of the phone not included
 * @param routes best first
 * @param closed why routes that are not there are closed, one sentence each
 * @param looks what is looked at on the desk before the route is chosen, by label; the most to pay counts on it
 * @param sheet what is then done as the bench sheet says, as far as it pays, by label, what is done in most cases first;
 *     the most to pay counts on it too
 * @param movers the numbers that move the most to pay, furthest first
 */
public record Worth(
        Optional<Money> offerCeiling,
        Bracket bracket,
        Optional<Money> lossCeiling,
        double lossLimit,
        Money error,
        Money price,
        boolean asked,
        boolean paid,
        Spread repairCost,
        List<RouteWorth> routes,
        List<String> closed,
        List<String> looks,
        List<String> sheet,
        List<Mover> movers) {
    public Worth {
        routes = List.copyOf(routes);
        closed = List.copyOf(closed);
        looks = List.copyOf(looks);
        sheet = List.copyOf(sheet);
        movers = List.copyOf(movers);
    }

    /** What is done before the route is chosen, in words; empty where it is chosen at once. */
    public Optional<String> countsOn() {
        String desk = String.join("; ", looks);
        String bench = String.join("; ", sheet);
        if (desk.isEmpty() && bench.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                bench.isEmpty()
                        ? desk
                        : (desk.isEmpty() ? "" : desk + "; then ") + "by the bench sheet, as it turns out: " + bench);
    }
}
