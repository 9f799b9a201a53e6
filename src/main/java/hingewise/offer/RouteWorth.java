package hingewise.offer;

import org.joda.money.Money;

/**
 * What a route is worth at a price of the phone.
 *
 * @param detail what exactly would be done, one sentence; blank where the route says it all
 * @param proceeds expected net proceeds before the price of the phone; a price given back is among them
 * @param expected expected profit
 * @param low profit that is missed in one of ten cases
 * @param middle profit that is reached in half the cases
 * @param high profit that is reached in one of ten cases
 * @param chanceOfLoss in 0–1
 */
public record RouteWorth(
        Route route,
        String detail,
        Money proceeds,
        Money expected,
        Money low,
        Money middle,
        Money high,
        double chanceOfLoss) {}
