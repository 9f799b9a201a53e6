package hingewise.costing;

import hingewise.casefile.CaseFile;
import hingewise.casefile.Price;
import java.util.Optional;
import org.joda.money.Money;

/**
 * What a phone itself costs, in the shop's currency.
 *
 * @param asked what its seller asks; empty if nobody wrote it down
 * @param refund what he gives back if he takes the phone back; empty if it cannot be given back or what was paid for it is
 *     not known
 * @param bought whether it was paid for, so that what is asked no longer matters
 */
public record Terms(Optional<Money> asked, Optional<Money> refund, boolean bought) {
    /** Nothing is known of any price. */
    public static final Terms UNKNOWN = new Terms(Optional.empty(), Optional.empty(), false);

    /**
     * The terms of a case, by the last prices that stand in it.
     *
     * @throws MixedCurrencyException if a price is in a currency for which the shop has no rate
     */
    public static Terms of(CaseFile file, Shop shop) {
        Optional<Money> paid = Price.last(file, Price.What.PAID).map(shop::in);
        return new Terms(
                Price.last(file, Price.What.ASKED).map(shop::in),
                paid.filter(p -> Returns.of(file, shop).open()),
                paid.isPresent());
    }
}
