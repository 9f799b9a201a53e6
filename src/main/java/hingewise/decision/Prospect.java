package hingewise.decision;

import java.util.List;

/**
 * What can be done about a case. Amounts are expected, per case, estimated from the worlds drawn.
 *
 * @param ending number of the best decision if it is taken now
 * @param stop what that costs
 * @param plan best found cost of going on as well as is known; at most {@code stop}
 * @param known what it would cost if the causes were known; no plan can cost less
 * @param error standard error of {@code stop}
 * @param options the acts that are worth looking at, the one to do first at the head if the plan goes on
 * @param goesOn whether the plan begins with an act; else it is to decide now
 */
public record Prospect(
        int ending, double stop, double plan, double known, double error, List<Option> options, boolean goesOn) {
    public Prospect {
        options = List.copyOf(options);
    }
}
