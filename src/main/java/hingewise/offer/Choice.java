package hingewise.offer;

import java.util.BitSet;

/**
 * Something that can be done with a phone once it is here, and what comes of it in each way the phone may be. Amounts
 * are net proceeds in minor units, before the price of the phone.
 *
 * @param route what it is called
 * @param proceeds by way the phone may be
 * @param refunded the ways in which the seller gives the price back besides
 */
record Choice(String route, long[] proceeds, BitSet refunded) {
    /** A choice after which the price stays paid. */
    Choice(String route, long... proceeds) {
        this(route, proceeds, new BitSet());
    }

    /** What comes of it in one way the phone may be, with the price of the phone given back where it is. */
    long at(int way, long price) {
        return proceeds[way] + (refunded.get(way) ? price : 0);
    }
}
