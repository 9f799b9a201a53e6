package hingewise.costing;

import org.joda.money.Money;

/**
 * What is expected to be lost by either choice.
 *
 * @param ordering the price, times the chance that the part is not needed
 * @param waiting the days it takes and another shipping, times the chance that it is needed
 */
public record Regret(Money ordering, Money waiting) {}
