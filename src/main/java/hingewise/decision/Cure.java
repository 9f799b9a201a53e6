package hingewise.decision;

/**
 * A cause that an act may remove.
 *
 * @param chance that it is gone afterwards if it was there, in 0–1
 */
public record Cure(int cause, double chance) {}
