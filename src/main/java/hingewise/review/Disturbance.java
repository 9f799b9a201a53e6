package hingewise.review;

import hingewise.rulebook.RuleBook;
import java.util.Random;

/** Copies of a rule book whose numbers are all moved at once, by {@link Noise}. */
public final class Disturbance {
    private Disturbance() {}

    /**
     * One copy.
     *
     * @param deviation standard deviation in log10-odds
     */
    public static RuleBook of(RuleBook rules, double deviation, long seed) {
        return Noise.drawn(Numbers.names(rules), new Random(seed)).on(rules, deviation);
    }
}
