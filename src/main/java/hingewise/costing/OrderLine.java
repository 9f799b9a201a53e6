package hingewise.costing;

import hingewise.rulebook.Part;
import java.util.Optional;
import java.util.Set;
import org.joda.money.Money;

/**
 * One line of a parts list.
 *
 * @param offer the offer to take; empty where the price book has none that may be taken
 * @param causes ids of the causes it is for
 * @param chance that one of them is there, in 0–1
 * @param regret what may be lost by ordering it now, and by waiting
 */
public record OrderLine(
        Part part, int quantity, Optional<Offer> offer, Set<String> causes, double chance, Regret regret) {
    /** From here on a part is needed all but certainly. */
    private static final double SURE = .9;

    public OrderLine {
        causes = Set.copyOf(causes);
    }

    /** Whether it is needed all but certainly; if not, it is likely. */
    public boolean sure() {
        return chance >= SURE;
    }

    /** What is paid for it; empty without an offer. */
    public Optional<Money> goods() {
        return offer.map(o -> o.price().multipliedBy(quantity));
    }
}
