package hingewise.costing;

import hingewise.rulebook.Confirmation;
import java.util.Set;

/**
 * A component that looks broken enough to order for, and a try that should come first: if the try cures another cause of
 * the same signs, the order would have been in vain.
 *
 * @param component id of the component
 * @param causes ids of the causes it would be ordered for
 * @param until what to try first
 */
public record HeldPart(String component, Set<String> causes, Confirmation until) {
    public HeldPart {
        causes = Set.copyOf(causes);
    }
}
