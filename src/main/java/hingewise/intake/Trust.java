package hingewise.intake;

import java.util.List;

/**
 * How far claims that agree are to be trusted: a logistic regression over what stands in {@link #features}. The weights
 * were fitted to what was found in 150 texts that neither phrases nor examples had been written by; {@code TrustFit} in
 * the test sources prints them.
 */
final class Trust {
    /** A claim that is trusted less is not suggested. */
    static final double LEAST = .5;

    private static final double[] WEIGHTS = {.4, .3, .25, .5, .5, -.4, 1.45, .2, -1.15};
    private static final int SEVERAL = 3;
    private static final double FARTHEST = 3;

    private Trust() {}

    /** @return the chance that they are right, in 0–1 */
    static double of(List<Found> agreeing) {
        double[] features = features(agreeing);
        double odds = 0;
        for (int i = 0; i < features.length; i++) {
            odds += WEIGHTS[i] * features[i];
        }
        return 1 / (1 + Math.exp(-odds));
    }

    /**
     * A constant one; whether two phrases agree, and three; whether a part of the phone is named; whether several words
     * meet a phrase; how many observations the sentence is liker to, in doublings; whether there is none; how far the
     * clause leans to this answer; and whether the words stand in several clauses.
     */
    static double[] features(List<Found> agreeing) {
        long phrases =
                agreeing.stream().map(f -> f.evidence().phrase()).distinct().count();
        int words = agreeing.stream().mapToInt(f -> f.evidence().words()).max().orElse(0);
        int rank = agreeing.stream().mapToInt(f -> f.evidence().rank()).min().orElse(0);
        double lean =
                agreeing.stream().mapToDouble(f -> f.evidence().lean()).max().orElse(0);
        return new double[] {
            1,
            phrases >= 2 ? 1 : 0,
            phrases >= 3 ? 1 : 0,
            agreeing.stream().anyMatch(f -> f.evidence().part()) ? 1 : 0,
            words >= SEVERAL ? 1 : 0,
            Math.log(1 + rank) / Math.log(2),
            rank == 0 ? 1 : 0,
            Math.max(-FARTHEST, Math.min(FARTHEST, lean)),
            agreeing.stream().allMatch(f -> f.evidence().scattered()) ? 1 : 0
        };
    }
}
