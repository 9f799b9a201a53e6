package hingewise.diagnosis;

/**
 * What one entry did to the chance of a cause.
 *
 * @param entry id of the entry
 * @param text one sentence
 * @param weight change of the cause's log-odds (natural logarithm); the reasons of a cause sum to its whole change
 * @param without the chance without this entry, in 0–1
 */
public record Reason(String entry, String text, double weight, double without) {}
