package hingewise.casefile;

import hingewise.plain.Quoted;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.Optional;
import java.util.regex.Pattern;
import org.joda.money.CurrencyUnit;
import org.joda.money.IllegalCurrencyException;
import org.joda.money.Money;

/**
 * What the phone itself is to cost, or did.
 *
 * @param amount at least 0, shipping and tax not included
 */
public record Price(String id, Instant at, String by, What what, Money amount, String remark) implements Entry {
    private static final Pattern NUMBER = Pattern.compile("[0-9]{1,9}(\\.[0-9]{1,9})?");

    /** Which price it is. */
    public enum What {
        /** What the seller asks. */
        ASKED("asked"),
        /** What was paid for it. */
        PAID("paid");

        private final String id;

        What(String id) {
            this.id = id;
        }

        public String id() {
            return id;
        }
    }

    /**
     * An amount as people write it, such as 120 or 95.50, with the code of its currency.
     *
     * @throws IllegalArgumentException with a sentence that says what is wrong and how to write it
     */
    public static Money amount(String number, String currency) {
        CurrencyUnit unit;
        try {
            unit = CurrencyUnit.of(currency);
        } catch (IllegalCurrencyException e) {
            throw new IllegalArgumentException(
                    "the currency " + Quoted.of(currency) + " is not one of ISO 4217; write its code, such as EUR", e);
        }
        if (!NUMBER.matcher(number).matches() || new BigDecimal(number).scale() > unit.getDecimalPlaces()) {
            throw new IllegalArgumentException("the amount is " + Quoted.of(number) + "; write a number with at most "
                    + unit.getDecimalPlaces() + " decimals and no sign, as in "
                    + Money.of(unit, 120).getAmount().toPlainString());
        }
        return Money.of(unit, new BigDecimal(number));
    }

    /** The last price of this sort that stands in a case. */
    public static Optional<Money> last(CaseFile file, What what) {
        return file.standing().stream()
                .flatMap(e -> e instanceof Price p && p.what() == what
                        ? Optional.of(p.amount()).stream()
                        : Optional.<Money>empty().stream())
                .reduce((a, b) -> b);
    }
}
