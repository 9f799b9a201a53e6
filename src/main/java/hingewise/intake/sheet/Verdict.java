package hingewise.intake.sheet;

import java.util.Locale;
import org.joda.money.Money;

/** What to do about a listing. */
public enum Verdict {
    /** The price asked is not above the ceiling. */
    BUY,
    /** Worth buying, but only for less than is asked. */
    OFFER_LESS,
    /** Not to be bought at any price. */
    PASS;

    static Verdict of(Money price, Money ceiling) {
        if (ceiling.isZero()) {
            return PASS;
        }
        return price.isGreaterThan(ceiling) ? OFFER_LESS : BUY;
    }

    /** The word used in sheets: buy, offer-less, pass. */
    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
