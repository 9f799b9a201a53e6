package hingewise.intake;

/**
 * A claim that a text seems to make, to be accepted or refused by a person.
 *
 * @param observation id of the observation it would answer
 * @param yes the answer it would give
 * @param certainty how firmly it is said, in 0–1: {@link #PLAIN} for a plain statement, less for what is hedged, heard
 *     from somebody else or recognised through a misspelling. An order of firmness, not a chance that it is true: how
 *     far a claim is believed is the rule book's
 * @param quote the words it rests on
 * @param start of the quote in the text, in UTF-16 units
 * @param end just behind the quote
 */
public record Suggestion(String observation, boolean yes, double certainty, String quote, int start, int end) {
    /** Certainty of a plain statement. */
    public static final double PLAIN = .95;
}
