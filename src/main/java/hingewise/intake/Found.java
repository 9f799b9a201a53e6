package hingewise.intake;

import java.util.List;

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
     * @param phrase that was met, as it is written; empty when examples alone speak for it
     * @param part whether it names a part of the phone, which was met; or whether the words that were heard name one
     * @param words how many words of the text meet it, or were heard
     * @param silent whether the words that were heard seem to claim nothing of this phone
     * @param scattered whether these stand in several clauses
     * @param turned whether words outside the clause settle the answer, such as a "no" behind a question
     * @param hearing what the examples make of the words around it
     */
    record Evidence(
            String phrase,
            boolean part,
            int words,
            boolean silent,
            boolean scattered,
            boolean turned,
            Hearing hearing) {
        boolean byPhrase() {
            return !phrase.isEmpty();
        }

        double chance() {
            return hearing.chance();
        }

        double sentence() {
            return hearing.sentence();
        }

        double rival() {
            return hearing.rival();
        }
    }

    /**
     * What the examples make of words: chances, in 0–1.
     *
     * @param chance that they make the claim or, where other words settle the answer, that they speak of its question
     * @param sentence that their whole sentence makes it
     * @param rival that they make the likeliest claim about something else
     */
    record Hearing(double chance, double sentence, double rival) {
        static final Hearing NONE = new Hearing(0, 0, 0);
    }

    /** A claim that no phrase makes. */
    static Found heard(String about, boolean yes, SentenceReader.Told told, Hearing hearing) {
        List<Word> words = told.words();
        return new Found(
                about,
                yes,
                told.certainty(),
                0,
                words.get(0).start(),
                words.get(words.size() - 1).end(),
                new Evidence("", told.part(), words.size(), told.silent(), false, false, hearing));
    }

    Found weighed(Hearing hearing) {
        return with(
                terms,
                new Evidence(
                        evidence.phrase,
                        evidence.part,
                        evidence.words,
                        evidence.silent,
                        evidence.scattered,
                        evidence.turned,
                        hearing));
    }

    /** The same claim as one whose words stand in several clauses, which gives way to any other. */
    Found spread() {
        return with(
                0,
                new Evidence(
                        evidence.phrase,
                        evidence.part,
                        evidence.words,
                        evidence.silent,
                        true,
                        evidence.turned,
                        evidence.hearing));
    }

    private Found with(int of, Evidence other) {
        return new Found(about, yes, certainty, of, start, end, other);
    }
}
