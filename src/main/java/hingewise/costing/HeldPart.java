package hingewise.costing;

import hingewise.rulebook.Confirmation;
import java.util.Optional;
import java.util.Set;

/**
 * A component that may be broken, and for which nothing is to be ordered yet.
 *
 * @param component id of the component
 * @param causes ids of the causes it would be ordered for
 * @param until what to try first, because it may make the order needless; empty where it only is not sure enough
 * @param chance that it is broken, in 0–1
 * @param regret what may be lost by ordering for it now, and by waiting
 */
public record HeldPart(
        String component, Set<String> causes, Optional<Confirmation> until, double chance, Regret regret) {
    public HeldPart {
        causes = Set.copyOf(causes);
    }
}
