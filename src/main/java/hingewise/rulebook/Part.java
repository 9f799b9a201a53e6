package hingewise.rulebook;

import java.util.Optional;
import java.util.Set;

/**
 * Something that can be bought.
 *
 * @param renews components that are new once it is fitted
 * @param alongside parts that must be bought with it
 * @param access the state in which it is fitted; empty when nothing is opened
 * @param minutes to fit it, access not included
 */
public record Part(
        String id,
        String label,
        Form form,
        Set<String> renews,
        Set<String> alongside,
        Optional<String> access,
        double minutes,
        Set<String> families,
        Grounds grounds) {
    public Part {
        renews = Ordered.copyOf(renews);
        alongside = Ordered.copyOf(alongside);
        families = Set.copyOf(families);
    }

    /** The form in which a part is sold. */
    public enum Form {
        /** Several components bonded or mounted together. */
        ASSEMBLY,
        /** One component. */
        SINGLE,
        /** Used up: adhesive, seals, alcohol. */
        CONSUMABLE;

        public String id() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }
    }
}
