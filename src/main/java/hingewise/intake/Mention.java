package hingewise.intake;

import java.util.BitSet;

/**
 * Words of a clause that belong to word sets.
 *
 * @param from index of its first word in the sentence
 * @param to index just behind its last word
 * @param sets numbers of the word sets it belongs to
 * @param denies whether a word among them denies, as in "no picture"
 * @param light whether each of its words says nothing by itself, as in "does not"
 * @param exact whether it was met as written, and not through a misspelling
 */
record Mention(int from, int to, BitSet sets, boolean denies, boolean light, boolean exact) {
    /** The same, with what its single words tell of it. */
    Mention told(boolean withDenial, boolean ofLightWords) {
        return new Mention(from, to, sets, withDenial, ofLightWords, exact);
    }

    /** The same words in these sets only. */
    Mention in(BitSet these) {
        return new Mention(from, to, these, denies, light, exact);
    }

    /** The same words in all the sets of both. */
    Mention joined(Mention other) {
        BitSet all = (BitSet) sets.clone();
        all.or(other.sets);
        return new Mention(from, to, all, denies || other.denies, light && other.light, exact || other.exact);
    }

    int size() {
        return to - from;
    }

    boolean isIn(int set) {
        return set >= 0 && sets.get(set);
    }

    boolean isInAny(BitSet any) {
        return sets.intersects(any);
    }

    boolean covers(Mention other) {
        return from <= other.from && other.to <= to && to - from > other.to - other.from;
    }

    boolean overlaps(Mention other) {
        return from < other.to && other.from < to;
    }
}
