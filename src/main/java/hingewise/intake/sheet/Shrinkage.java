package hingewise.intake.sheet;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * Corrects expected profits for having been picked from many: the best-looking listing is the one most over-estimated.
 * Each estimate is drawn towards the mean of its sheet, the more so the less it can be trusted: what is kept of its
 * distance is 1 − (n − 3)/(n − 1) · e²/(b² + e²), where n is the number of listings, e the error of the estimate and b²
 * the variance of the true values between listings, estimated as the variance of the estimates less the mean of e², or 0.
 *
 * <p>Sources, from memory: the method is the empirical Bayes form of the James-Stein estimator, Efron and Morris 1975,
 * Journal of the American Statistical Association 70:311-319; that it answers the disappointment of picking the best of
 * many estimates, Smith and Winkler 2006, Management Science 52:311-322.
 *
 * <p>The error e is {@link #DOUBT} times the spread of the profit. If a chance is off by d in log-odds, the expectation
 * of a loss D with that chance p is off by d·p·(1 − p)·D, while the spread of that loss is √(p(1 − p))·D; so errors go
 * with spreads. How large they are was measured by disturbing all numbers of the shipped rule book ({@code DoubtStudy}):
 * noise of .3 and .5 on log10-odds, what careful estimates differ by (Henrion and others 1996, UAI), moves the expected
 * profits of the demo listings, relative to one another, by .13 and .19 of their spread. A quarter leaves some room for
 * what reading a text adds.
 *
 * @param count listings that were appraised
 * @param mean of their estimates
 * @param between variance of the true values between listings, at least 0
 */
public record Shrinkage(CurrencyUnit currency, long count, BigDecimal mean, BigDecimal between) {
    /** Error of an estimate, as a share of the spread of what it estimates. */
    public static final BigDecimal DOUBT = new BigDecimal(".25");

    /** With fewer listings the variance between them tells nothing, and nothing is corrected. */
    public static final int FEWEST = 4;

    /** Whether anything is corrected. */
    public boolean corrects() {
        return count >= FEWEST;
    }

    /** What is kept of an estimate's distance from the mean, in 0–1. */
    public double kept(Money spread) {
        double error = spread.getAmount().multiply(DOUBT).pow(2).doubleValue();
        if (!corrects() || error == 0) {
            return 1;
        }
        return 1 - (count - 3.0) / (count - 1.0) * error / (between.doubleValue() + error);
    }

    /** The corrected expectation, rounded to the minor unit. */
    public Money corrected(Money profit, Money spread) {
        BigDecimal kept = BigDecimal.valueOf(kept(spread));
        BigDecimal corrected = mean.add(profit.getAmount().subtract(mean).multiply(kept));
        return corrects() ? Money.of(currency, corrected, RoundingMode.HALF_EVEN) : profit;
    }
}
