package hingewise.decision;

/**
 * A sign that is looked at.
 *
 * @param ifShown chance that it is reported if it shows, in 0–1
 * @param ifNot chance that it is reported if it does not show, in 0–1
 * @param reading looks with the same number read alike as long as the sign stays as it is
 */
public record Look(int sign, double ifShown, double ifNot, int reading) {}
