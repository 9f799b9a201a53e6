package hingewise.planning;

import java.util.Map;
import java.util.Set;
import org.joda.money.Money;

/**
 * A way to end a case other than repairing the phone here. Amounts say how much less it brings than selling the phone
 * unopened with everything working.
 *
 * @param cost whatever is the matter
 * @param less what each broken component costs besides, by id
 * @param mends components that are put right; of any other a fault is left
 * @param leavesNothing whether no fault is a concern afterwards
 * @param unopened whether it is possible only as long as nothing was opened
 */
record Alternative(
        Decision.Kind kind,
        Money cost,
        Map<String, Money> less,
        Set<String> mends,
        boolean leavesNothing,
        boolean unopened) {}
