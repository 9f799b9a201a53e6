package hingewise.planning;

import java.util.List;
import org.joda.money.Money;

/**
 * What to do about a case. Amounts are expected costs from here on, estimated from phones drawn from what is known.
 *
 * @param decision what to decide now
 * @param now what that costs
 * @param expected what going on as well as is known costs; never more than {@code now}, and never less than the best
 *     possible but for chance
 * @param knowing what it would cost if everything were known; nothing can cost less
 * @param error standard error of {@code now}
 * @param goesOn whether the first step is worth doing before deciding
 * @param steps what can be done, the first to do first; where nothing is worth doing, what tells most
 */
public record Plan(
        Decision decision, Money now, Money expected, Money knowing, Money error, boolean goesOn, List<Step> steps) {
    public Plan {
        steps = List.copyOf(steps);
    }

    /** The most that could still be saved, by knowing everything. */
    public Money atMost() {
        Money most = now.minus(knowing);
        return most.isNegative() ? Money.zero(now.getCurrencyUnit()) : most;
    }
}
