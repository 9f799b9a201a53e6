package hingewise.offer;

import org.joda.money.Money;

/**
 * A number, and how far it moves the most to pay.
 *
 * @param number what it is, such as "price of the inner display assembly"
 * @param change by what part of itself it is changed, both ways
 * @param lower the most to pay if it were lower
 * @param higher the most to pay if it were higher
 * @param sentence the same in words
 */
public record Mover(String number, double change, Money lower, Money higher, String sentence) {
    /** How far apart the two are. */
    public Money swing() {
        return lower.minus(higher).abs();
    }
}
