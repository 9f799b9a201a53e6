package hingewise.costing;

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
public record Offer(String part, String supplier, Money price, String grade, int days, double badOnArrival) {
    /** The same offer at another price. */
    public Offer at(Money other) {
        return new Offer(part, supplier, other, grade, days, badOnArrival);
    }
}
