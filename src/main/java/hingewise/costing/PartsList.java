package hingewise.costing;

import java.util.List;

/**
 * What to buy.
 *
 * @param order what to order now
 * @param held what looks broken enough, and waits for a try
 */
public record PartsList(List<OrderLine> order, List<HeldPart> held) {
    public static final PartsList NOTHING = new PartsList(List.of(), List.of());

    public PartsList {
        order = List.copyOf(order);
        held = List.copyOf(held);
    }
}
