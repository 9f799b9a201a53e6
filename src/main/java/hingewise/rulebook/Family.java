package hingewise.rulebook;

import java.util.Optional;
import java.util.Set;

/**
 * A way of folding, or one model that folds this way.
 *
 * @param components ids of the components it has
 * @param model what differs from the family it refines; empty for a way of folding, and in a rule book for one model
 */
public record Family(String id, String label, Set<String> components, Optional<Model> model, Grounds grounds) {
    public Family {
        components = Ordered.copyOf(components);
    }
}
