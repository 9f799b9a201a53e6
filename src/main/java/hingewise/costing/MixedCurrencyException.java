package hingewise.costing;

import org.joda.money.CurrencyUnit;

/** Amounts in two currencies cannot be added. */
public final class MixedCurrencyException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public MixedCurrencyException(Offer offer, CurrencyUnit expected) {
        super("the price book offers \"" + offer.part() + "\" from " + offer.supplier() + " at " + offer.price()
                + ", but the bench reckons in " + expected + ". Give all prices in " + expected + ".");
    }
}
