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
 * @param worth how many of the steps, from the first, are worth doing before deciding
 * @param askFirst ids of what must be answered before that opens the phone, not recorded yet
 * @param steps what can be done, the first to do first; after those that are worth it, those that tell most
 */
public record Plan(
        Decision decision,
        Money now,
        Money expected,
        Money knowing,
        Money error,
        int worth,
        List<String> askFirst,
        List<Step> steps) {
    public Plan {
        askFirst = List.copyOf(askFirst);
        steps = List.copyOf(steps);
    }

    /** Whether anything is worth doing before deciding. */
    public boolean goesOn() {
        return worth > 0;
    }

    /** Whether it is decided already not to repair it here. */
    public boolean elsewhere() {
        return !goesOn() && decision.elsewhere();
    }

    /** The steps that are worth doing before deciding. */
    public List<Step> worthDoing() {
        return steps.subList(0, worth);
    }

    /** The most that could still be saved, by knowing everything. */
    public Money atMost() {
        Money most = now.minus(knowing);
        return most.isNegative() ? Money.zero(now.getCurrencyUnit()) : most;
    }
}
