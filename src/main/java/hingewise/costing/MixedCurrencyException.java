package hingewise.costing;

import org.joda.money.CurrencyUnit;

/** Amounts in two currencies cannot be added without a rate. */
public final class MixedCurrencyException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public MixedCurrencyException(CurrencyUnit found, CurrencyUnit expected) {
        super("there are amounts in " + found + ", but the shop reckons in " + expected
                + " and names no rate. Give them in " + expected + ", or add to the shop file \"rates: {" + found
                + ": …}\", what one " + found + " is worth in " + expected + ".");
    }
}
