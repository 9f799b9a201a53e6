package hingewise.planning;

import java.math.RoundingMode;
import java.util.List;
import java.util.Set;
import org.joda.money.Money;

/**
 * A way to end a case other than repairing the phone here. Amounts say how much less it brings than selling the phone
 * unopened with everything working.
 *
 * @param cost whatever is the matter
 * @param less what broken components cost besides
 * @param mends components that are put right; of any other a fault is left
 * @param leavesNothing whether no fault is a concern afterwards
 * @param concern share of cases in which what it does not put right is a concern, in 0–1
 * @param unopened whether it is possible only as long as nothing was opened
 */
record Alternative(
        Decision.Kind kind,
        Money cost,
        List<Less> less,
        Set<String> mends,
        boolean leavesNothing,
        double concern,
        boolean unopened) {
    /** Lost once if any of these components is broken. */
    record Less(Set<String> components, Money amount) {
        Less share(double share) {
            return new Less(components, amount.multipliedBy(share, RoundingMode.HALF_EVEN));
        }
    }
}
