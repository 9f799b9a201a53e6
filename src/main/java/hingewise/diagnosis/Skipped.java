package hingewise.diagnosis;

/**
 * An entry, or a part of one, that was left out of the reckoning.
 *
 * @param entry id of the entry
 * @param observation id of the observation that could not be made
 * @param why one sentence
 */
public record Skipped(String entry, String observation, String why) {}
