package hingewise.costing;

import java.util.BitSet;
import java.util.List;

/**
 * What is to be bought, in bare numbers: items that cover needs, bids for the items, suppliers with terms. Amounts are in
 * minor units of one currency and at least 0.
 *
 * @param needs how many needs there are, numbered from 0
 * @param steps what each step of opening costs, paid once for all items that need it
 * @param perDay what a day of waiting for the last item costs
 */
record PurchaseProblem(int needs, List<Item> items, List<Terms> suppliers, List<Long> steps, long perDay) {
    /** Bids of suppliers without terms. */
    static final int NO_TERMS = -1;

    PurchaseProblem {
        items = List.copyOf(items);
        suppliers = List.copyOf(suppliers);
        steps = List.copyOf(steps);
    }

    /**
     * Something that can be bought.
     *
     * @param covers the needs it serves
     * @param bundle the items that are bought if it is, itself among them
     * @param work what fitting it costs
     * @param opens the steps of opening it needs
     * @param bids who sells it; empty if nobody does
     */
    record Item(BitSet covers, BitSet bundle, long work, BitSet opens, List<Bid> bids) {
        Item {
            bids = List.copyOf(bids);
        }

        /** Whether it is missing where it is needed: an item that only comes alongside is not counted. */
        boolean missing() {
            return bids.isEmpty() && !covers.isEmpty();
        }

        /** The least that buying it costs beside shipping. */
        long least() {
            return bids.stream().mapToLong(Bid::cost).min().orElse(0);
        }
    }

    /**
     * An offer for the quantity that is needed.
     *
     * @param supplier number of a supplier with terms, or {@link #NO_TERMS}
     * @param goods what is paid for the goods
     * @param extra what else it is expected to cost
     * @param days until it is there
     */
    record Bid(int supplier, long goods, long extra, int days) {
        long cost() {
            return goods + extra;
        }
    }

    /** What a supplier charges once, and what goods are charged at least. */
    record Terms(long shipping, long minimum) {}
}
