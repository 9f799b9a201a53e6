package hingewise.costing;

import hingewise.rulebook.Part;
import java.util.Optional;
import java.util.Set;

/**
 * One line of a parts list.
 *
 * @param offer the offer to take; empty where the price book has none
 * @param causes ids of the causes it is for
 */
public record OrderLine(Part part, int quantity, Optional<Offer> offer, Set<String> causes) {
    public OrderLine {
        causes = Set.copyOf(causes);
    }
}
