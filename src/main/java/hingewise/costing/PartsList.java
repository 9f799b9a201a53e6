package hingewise.costing;

import java.util.List;
import java.util.Optional;

/**
 * What to buy.
 *
 * @param order what to order now
 * @param held what may be broken, and waits
 * @param purchase what the order costs all together; empty if nothing is ordered
 * @param runnerUp the same parts bought otherwise, sooner or for less; empty if there is no other way
 */
public record PartsList(
        List<OrderLine> order, List<HeldPart> held, Optional<Purchase> purchase, Optional<Purchase> runnerUp) {
    public static final PartsList NOTHING = new PartsList(List.of(), List.of(), Optional.empty(), Optional.empty());

    public PartsList {
        order = List.copyOf(order);
        held = List.copyOf(held);
    }
}
