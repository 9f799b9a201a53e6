package hingewise.decision;

/**
 * Worlds that look alike so far.
 *
 * @param worlds which
 * @param states number of the state each is in by now
 * @param size how many of the two arrays count
 * @param open gates that are open (one bit each)
 * @param done acts that were done (one bit each)
 */
record Lot(int[] worlds, int[] states, int size, long open, long done) {}
