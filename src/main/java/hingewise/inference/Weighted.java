package hingewise.inference;

/**
 * A report on the variable that may be wrong, given as its two likelihoods.
 *
 * @param ifYes P(report | yes), at least 0
 * @param ifNo P(report | no), at least 0; not both are 0
 */
public record Weighted(double ifYes, double ifNo) implements Finding {
    /** @throws IllegalArgumentException when a likelihood is negative, infinite or not a number, or both are 0 */
    public Weighted {
        if (!(ifYes >= 0 && ifNo >= 0 && ifYes + ifNo > 0 && ifYes + ifNo < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("the likelihoods " + ifYes + " : " + ifNo
                    + " cannot be used; both must be finite and at least 0, and one of them above 0");
        }
    }
}
