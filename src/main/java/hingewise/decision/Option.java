package hingewise.decision;

/**
 * An act that may be done now. Amounts are expected, per case.
 *
 * @param act number of the act
 * @param gross how much less the best decision costs after it alone, opening that it pays already left out
 * @param cost what it costs; opening included, but for what the best decision now would have to open anyway
 * @param with number of a second act that it is only worth doing with, or {@link #ALONE}
 * @param net gross less cost; of a pair, of both together
 * @param told what its looks tell of the counted causes: bits of each times what leaving it costs, summed
 * @param whole best found cost of the case when this is done first; infinite if that was not looked at
 */
public record Option(int act, double gross, double cost, int with, double net, double told, double whole) {
    public static final int ALONE = -1;
}
