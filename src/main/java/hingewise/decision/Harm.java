package hingewise.decision;

/**
 * Something that an act or an opening may bring about.
 *
 * @param cause what may come to be there
 * @param chance that it does if it was absent, in 0–1
 * @param given causes (one bit each) of which at least one must be there for it to happen; 0 if it always may
 */
public record Harm(int cause, double chance, long given) {}
