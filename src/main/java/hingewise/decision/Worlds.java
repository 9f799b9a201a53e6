package hingewise.decision;

import java.util.BitSet;
import java.util.List;

/**
 * Equally likely worlds, drawn from what is known. In each, some causes are there, and for each sign it is settled which
 * causes show it if they are there, so that after a cure the sign goes as the draws say.
 */
public final class Worlds {
    private final long[] present;
    private final long[][] showing;
    private final List<BitSet> otherwise;

    /**
     * @param present the causes that are there (one bit each), by world
     * @param showing the causes that show a sign if they are there (one bit each), by sign and world
     * @param otherwise for each sign the worlds in which it shows for another reason
     */
    public Worlds(long[] present, long[][] showing, List<BitSet> otherwise) {
        this.present = present.clone();
        this.showing = new long[showing.length][];
        for (int s = 0; s < showing.length; s++) {
            this.showing[s] = showing[s].clone();
        }
        this.otherwise = otherwise.stream().map(b -> (BitSet) b.clone()).toList();
    }

    /** How many there are. */
    public int count() {
        return present.length;
    }

    long present(int world) {
        return present[world];
    }

    /** The causes that show a sign if they are there (one bit each), by world; not to be changed. */
    long[] showing(int sign) {
        return showing[sign];
    }

    /** The worlds in which a sign shows for another reason; not to be changed. */
    BitSet otherwise(int sign) {
        return otherwise.get(sign);
    }
}
