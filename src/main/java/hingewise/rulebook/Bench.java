package hingewise.rulebook;

import java.math.BigDecimal;

/**
 * The few figures of the bench that costs are reckoned with.
 *
 * @param currency ISO 4217 code
 * @param labourPerHour what an hour of work costs
 * @param priceOfFailure what it costs when a repair leaves a fault behind: a second round, a delay, a return
 */
public record Bench(String currency, BigDecimal labourPerHour, BigDecimal priceOfFailure, Grounds grounds) {}
