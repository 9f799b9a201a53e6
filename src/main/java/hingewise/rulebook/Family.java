package hingewise.rulebook;

import java.util.Set;

/**
 * A way of folding.
 *
 * @param components ids of the components it has
 */
public record Family(String id, String label, Set<String> components, Grounds grounds) {
    public Family {
        components = Ordered.copyOf(components);
    }
}
