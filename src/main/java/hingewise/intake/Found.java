package hingewise.intake;

/**
 * A claim found in a text.
 *
 * @param about id of the observation or hint it bears on
 * @param terms how many terms of its phrase were met: what is more specific wins over what is less so
 * @param start offset of its first word
 * @param end offset just behind its last word
 * @param evidence what it rests on
 */
record Found(String about, boolean yes, double certainty, int terms, int start, int end, Evidence evidence) {
    /**
     * @param phrase that was met, as it is written
     * @param part whether it names a part of the phone, which was met
     * @param words how many words of the text meet it
     * @param scattered whether these stand in several clauses
     * @param rank how many observations have examples that the sentence is liker to; 0 when it is likest to its own
     * @param lean by how much the sentence is liker to examples of this answer than to those of the opposite one
     */
    record Evidence(String phrase, boolean part, int words, boolean scattered, int rank, double lean) {}

    Found ranked(int rank, double lean) {
        return with(
                terms, new Evidence(evidence.phrase, evidence.part, evidence.words, evidence.scattered, rank, lean));
    }

    /** The same claim as one whose words stand in several clauses, which gives way to any other. */
    Found spread() {
        return with(
                0, new Evidence(evidence.phrase, evidence.part, evidence.words, true, evidence.rank, evidence.lean));
    }

    private Found with(int of, Evidence other) {
        return new Found(about, yes, certainty, of, start, end, other);
    }
}
