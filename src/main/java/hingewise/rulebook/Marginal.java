package hingewise.rulebook;

import java.util.Set;

/**
 * What records from outside say of how common something is among phones of which nothing is known yet; the rule book's
 * own chances are held against it.
 *
 * @param causes at least one of these, or of the histories
 * @param histories what else counts
 * @param from the least chance the records allow, in .001–.999
 * @param to the greatest
 * @param families families the records speak of
 */
public record Marginal(
        String id,
        String label,
        Set<String> causes,
        Set<String> histories,
        double from,
        double to,
        Set<String> families,
        Grounds grounds) {
    public Marginal {
        causes = Ordered.copyOf(causes);
        histories = Ordered.copyOf(histories);
        families = Set.copyOf(families);
    }
}
