package hingewise.simulation;

import hingewise.planning.Decision;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * How the ways to go about a phone compare on the same phones.
 *
 * @param cases phones that were followed
 * @param starts different first looks; the phones of one are drawn from what is known after it
 * @param setAside phones that were left out in all manners because in one of them the evidence came to hang together
 *     too much to be reckoned exactly
 * @param rows one for each manner
 * @param knowing what the phones would cost if it were known what is there
 * @param belowPlan how much less that is than what the plan costs
 * @param endings how cases end that go as planned, as shares
 */
public record Comparison(
        int cases,
        int starts,
        int setAside,
        List<Row> rows,
        Mean knowing,
        Mean belowPlan,
        Map<Decision.Kind, Double> endings) {
    public Comparison {
        rows = List.copyOf(rows);
        endings = Map.copyOf(endings);
    }

    /**
     * A mean over the cases with its standard error, which is reckoned between first looks: cases of one are not
     * independent of each other.
     */
    public record Mean(double mean, double error) {
        /** @param byStart means of about equally many cases each */
        static Mean of(List<Double> byStart) {
            int n = byStart.size();
            double mean =
                    byStart.stream().mapToDouble(Double::doubleValue).average().orElse(0);
            double squares =
                    byStart.stream().mapToDouble(x -> (x - mean) * (x - mean)).sum();
            return new Mean(mean, n < 2 ? Double.POSITIVE_INFINITY : Math.sqrt(squares / (n - 1) / n));
        }
    }

    /**
     * Means per case of one manner.
     *
     * @param cost in the shop's currency
     * @param more what it costs more than going as planned
     * @param minutes hands-on
     * @param days of waiting
     * @param fitted parts, consumables not counted
     * @param needless of those, parts of which nothing that they renew was faulty
     * @param openings steps of opening
     * @param inVain of those, steps behind which nothing that counts was wrong
     * @param left share in which something that counts was left
     */
    public record Row(
            Manner manner,
            Mean cost,
            Mean more,
            double minutes,
            double days,
            double fitted,
            double needless,
            double openings,
            double inVain,
            double left) {}

    /** The row of a manner. */
    public Row of(Manner manner) {
        return rows.stream().filter(r -> r.manner() == manner).findFirst().orElseThrow();
    }

    /**
     * The phones of one first look.
     *
     * @param outcomes of each manner, phone by phone
     * @param knowing cost if all were known, phone by phone
     */
    record Sample(EnumMap<Manner, List<Outcome>> outcomes, List<Double> knowing) {}

    static Comparison of(List<Sample> samples, int begun) {
        return new Summing(samples).comparison(begun);
    }
}
