package hingewise.rulebook;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * One state of opening, reached from its parent by one step.
 *
 * @param parent the state it is reached from; empty when reached from closed
 * @param minutes for this step alone, in and out again
 * @param cost consumables of this step, in the bench's currency
 * @param needs observations and the answers they must have, in the order to ask, before the step
 * @param damages what the step may bring about
 * @param tools tools this step takes
 * @param cautions cautions to show before the step
 */
public record Access(
        String id,
        String label,
        Optional<String> parent,
        double minutes,
        BigDecimal cost,
        Map<String, Boolean> needs,
        Damages damages,
        Set<String> tools,
        Set<String> cautions,
        Set<String> families,
        Grounds grounds) {
    public Access {
        needs = Ordered.copyOf(needs);
        tools = Ordered.copyOf(tools);
        cautions = Ordered.copyOf(cautions);
        families = Set.copyOf(families);
    }
}
