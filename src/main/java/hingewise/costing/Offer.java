package hingewise.costing;

import hingewise.casefile.Phone;
import java.util.Locale;
import java.util.OptionalInt;
import org.joda.money.Money;

/**
 * A part somebody sells.
 *
 * @param part part id of the rule book
 * @param supplier who sells it
 * @param price for one
 * @param grade such as service, aftermarket, pulled
 * @param days until it arrives, at least 0
 * @param badOnArrival chance that it arrives bad, in 0–.999
 */
public record Offer(
        String part, String supplier, Money price, String grade, int days, double badOnArrival, Limits limits) {
    /** An offer of any quantity for any phone. */
    public Offer(String part, String supplier, Money price, String grade, int days, double badOnArrival) {
        this(part, supplier, price, grade, days, badOnArrival, Limits.NONE);
    }

    /**
     * For what an offer holds.
     *
     * @param from the least quantity at this price, at least 1
     * @param available how many there are; empty if as many as one likes
     * @param variant words that the label of the phone must contain; blank for any
     * @param colour the same, for a part that shows
     */
    public record Limits(int from, OptionalInt available, String variant, String colour) {
        static final Limits NONE = new Limits(1, OptionalInt.empty(), "", "");

        boolean allow(Phone phone) {
            String label = phone.label().toLowerCase(Locale.ROOT);
            return label.contains(variant.toLowerCase(Locale.ROOT))
                    && label.contains(colour.toLowerCase(Locale.ROOT))
                    && from <= available.orElse(Integer.MAX_VALUE);
        }
    }

    /** How many must be bought where one is needed. */
    public int quantity() {
        return limits.from();
    }

    /** What is paid where one is needed. */
    public Money goods() {
        return price.multipliedBy(quantity());
    }

    /** The same offer at another price. */
    Offer at(Money other) {
        return new Offer(part, supplier, other, grade, days, badOnArrival, limits);
    }
}
