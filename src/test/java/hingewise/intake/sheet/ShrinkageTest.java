package hingewise.intake.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.RoundingMode;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

class ShrinkageTest {
    private static Money eur(double amount) {
        return Money.of(CurrencyUnit.EUR, amount, RoundingMode.HALF_EVEN);
    }

    private static Shrinkage of(List<Money> profits, Money spread) {
        Moments moments = new Moments(CurrencyUnit.EUR);
        profits.forEach(p -> moments.add(p, spread));
        return moments.shrinkage();
    }

    /** Worked by hand: mean 30, variance 1000, error (.25 · 80)² = 400, so b² = 600; kept 1 − 2/4 · 400/1000. */
    @Test
    void theCorrectionIsWhatAHandWorksOut() {
        Shrinkage shrinkage = of(List.of(eur(-10), eur(10), eur(30), eur(50), eur(70)), eur(80));
        assertThat(shrinkage.mean()).isEqualByComparingTo("30");
        assertThat(shrinkage.between()).isEqualByComparingTo("600");
        assertThat(shrinkage.kept(eur(80))).isCloseTo(.8, within(1e-12));
        assertThat(shrinkage.corrected(eur(70), eur(80))).isEqualTo(eur(62));
        assertThat(shrinkage.corrected(eur(-10), eur(80))).isEqualTo(eur(-2));
    }

    @Test
    void theLessAnEstimateCanBeTrustedTheLessOfItIsKept() {
        Shrinkage shrinkage = of(List.of(eur(-10), eur(10), eur(30), eur(50), eur(70)), eur(80));
        assertThat(shrinkage.kept(eur(0))).isEqualTo(1);
        assertThat(shrinkage.kept(eur(40))).isGreaterThan(shrinkage.kept(eur(120)));
    }

    @Test
    void fewListingsAreLeftAsTheyAre() {
        Shrinkage shrinkage = of(List.of(eur(5), eur(90), eur(12)), eur(40));
        assertThat(shrinkage.corrects()).isFalse();
        assertThat(shrinkage.corrected(eur(90), eur(40))).isEqualTo(eur(90));
    }

    @Test
    void equalEstimatesStayEqual() {
        Shrinkage shrinkage = of(List.of(eur(7), eur(7), eur(7), eur(7)), eur(40));
        assertThat(shrinkage.between()).isZero();
        assertThat(shrinkage.corrected(eur(7), eur(40))).isEqualTo(eur(7));
    }

    /**
     * How far the best of a sheet turns out from what was said of it, beyond how far all of its sheet turn out from it,
     * on the mean of many sheets.
     *
     * @param error standard error of the corrected mean
     */
    private record Disappointment(double raw, double corrected, double error) {}

    private interface Truth {
        /** A true value, an estimate of it, and the standard deviation of the outcome. */
        double[] draw(Random random);
    }

    private static Disappointment best(long seed, int sheets, int listings, Truth truth) {
        Random random = new Random(seed);
        double raw = 0;
        double corrected = 0;
        double squares = 0;
        for (int s = 0; s < sheets; s++) {
            List<double[]> drawn = IntStream.range(0, listings)
                    .mapToObj(i -> truth.draw(random))
                    .toList();
            Moments moments = new Moments(CurrencyUnit.EUR);
            drawn.forEach(d -> moments.add(eur(d[1]), eur(d[2])));
            Shrinkage shrinkage = moments.shrinkage();
            double[] best =
                    drawn.stream().max((a, b) -> Double.compare(a[1], b[1])).orElseThrow();
            double[] bestCorrected = drawn.stream()
                    .max((a, b) -> Double.compare(after(shrinkage, a), after(shrinkage, b)))
                    .orElseThrow();
            double all = drawn.stream().mapToDouble(d -> d[1] - d[0]).average().orElseThrow();
            double off = after(shrinkage, bestCorrected) - bestCorrected[0] - all;
            raw += best[1] - best[0] - all;
            corrected += off;
            squares += off * off;
        }
        double mean = corrected / sheets;
        return new Disappointment(raw / sheets, mean, Math.sqrt((squares / sheets - mean * mean) / sheets));
    }

    private static double after(Shrinkage shrinkage, double[] drawn) {
        return shrinkage.corrected(eur(drawn[1]), eur(drawn[2])).getAmount().doubleValue();
    }

    /** The setting of the theory: true values and errors are normal, the errors of two sizes. */
    @Test
    void theBestOfASheetIsNoDisappointmentAfterCorrection() {
        for (int listings : new int[] {20, 100}) {
            Disappointment d = best(7, 1000, listings, random -> {
                double value = 10 + 50 * random.nextGaussian();
                double error = random.nextBoolean() ? 20 : 40;
                return new double[] {value, value + error * random.nextGaussian(), 4 * error};
            });
            assertThat(d.raw()).as("raw, seed 7, %d listings", listings).isGreaterThan(20);
            assertThat(Math.abs(d.corrected()))
                    .as("corrected, seed 7, %d listings: %s", listings, d)
                    .isLessThan(4 * d.error() + .03 * d.raw());
        }
    }

    /**
     * Not the setting of the theory: a phone has up to twelve faults with chances of their own, each costing something,
     * and whoever estimates has every chance wrong by a factor in odds that the correction was not told of: noise of .3
     * on log10-odds, as in Henrion and others 1996, UAI.
     */
    @Test
    void chancesThatAreWrongDisappointLessAfterCorrection() {
        Disappointment d = best(11, 300, 100, random -> {
            double value = 150;
            double estimate = 150;
            double variance = 0;
            for (int fault = 0; fault < 12; fault++) {
                double cost = 10 + 50 * random.nextDouble();
                double odds = Math.exp(-1.2 + 1.2 * random.nextGaussian());
                double chance = odds / (1 + odds);
                double wrong = odds * Math.pow(10, .3 * random.nextGaussian());
                double believed = wrong / (1 + wrong);
                value -= chance * cost;
                estimate -= believed * cost;
                variance += believed * (1 - believed) * cost * cost;
            }
            return new double[] {value, estimate, Math.sqrt(variance)};
        });
        assertThat(d.raw()).as("raw, seed 11").isGreaterThan(10);
        assertThat(Math.abs(d.corrected())).as("corrected, seed 11: %s", d).isLessThan(.6 * d.raw());
    }

    @Test
    void whereAllListingsAreAlikeNothingIsPromisedOfTheBest() {
        Disappointment d = best(13, 300, 100, random -> new double[] {25, 25 + 30 * random.nextGaussian(), 120});
        assertThat(d.raw()).as("raw, seed 13").isGreaterThan(60);
        assertThat(Math.abs(d.corrected())).as("corrected, seed 13: %s", d).isLessThan(8);
    }
}
