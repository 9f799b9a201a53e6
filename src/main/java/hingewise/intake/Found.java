package hingewise.intake;

/**
 * A claim found in a text.
 *
 * @param about id of the observation or hint it bears on
 * @param terms how many terms of its phrase were met: what is more specific wins over what is less so
 * @param start offset of its first word
 * @param end offset just behind its last word
 */
record Found(String about, boolean yes, double certainty, int terms, int start, int end) {}
