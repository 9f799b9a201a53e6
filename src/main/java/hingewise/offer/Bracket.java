package hingewise.offer;

import java.util.Optional;
import org.joda.money.Money;

/**
 * The most to pay by expected profit; each empty where no price is low enough.
 *
 * @param fixed if the route is chosen now and kept
 * @param ceiling if it is chosen after what is worth looking at
 * @param perfect if it were known which of the routes is best
 */
public record Bracket(Optional<Money> fixed, Optional<Money> ceiling, Optional<Money> perfect) {}
