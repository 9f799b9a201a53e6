package hingewise.inference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hingewise.oracle.RandomNetworks;
import hingewise.oracle.RandomNetworks.Layers;
import hingewise.oracle.RandomNetworks.Puzzle;
import hingewise.oracle.RandomNetworks.Shape;
import hingewise.oracle.SignedElimination;
import hingewise.oracle.SignedSum;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Many positive findings with leaks near 1e-4, where methods that subtract lose every digit. Recomputed with signed sums
 * in decimals of more digits than can cancel.
 */
class CancellationTest {
    private static final int DIGITS = 120;

    /** How many digits of the decimal sum survive: those carried less those by which P(e) is small. */
    private static void enoughDigits(BigDecimal evidence) {
        double log10 =
                Math.log10(evidence.round(new MathContext(17)).unscaledValue().doubleValue())
                        - evidence.round(new MathContext(17)).scale();
        assertThat(DIGITS + log10).isGreaterThan(20);
    }

    private static double log(BigDecimal value) {
        BigDecimal rounded = value.round(new MathContext(20));
        return Math.log(rounded.unscaledValue().doubleValue()) - rounded.scale() * Math.log(10);
    }

    private static void agreesWithSignedSum(int positives, int causes, long seed) {
        Layers layers = new Layers(Shape.RANDOM, 0, causes, positives + 5, 3, 6, positives, 5, false, 1e-4);
        Puzzle puzzle = RandomNetworks.layered(layers, seed);
        Solution solution = Solver.of(puzzle.network(), puzzle.evidence(), Set.copyOf(puzzle.causes()))
                .solve(puzzle.evidence());
        SignedSum truth = new SignedSum(puzzle.network(), puzzle.evidence(), DIGITS);
        enoughDigits(truth.evidence());
        assertThat(solution.logEvidence()).as("seed %d", seed).isCloseTo(log(truth.evidence()), within(1e-10));
        for (String cause : puzzle.causes()) {
            assertThat(solution.probability(cause))
                    .as("%s, seed %d", cause, seed)
                    .isCloseTo(truth.posterior(cause), within(1e-11));
        }
    }

    @Test
    void twelvePositiveFindingsKeepTheirDigits() {
        for (long seed = 0; seed < 5; seed++) {
            agreesWithSignedSum(12, 14, seed);
        }
    }

    @Test
    void twentyPositiveFindingsKeepTheirDigits() {
        agreesWithElimination(new Layers(Shape.RANDOM, 0, 10, 25, 3, 6, 20, 5, false, 1e-4), 2);
    }

    @Test
    @Tag("slow")
    void twentyPositiveFindingsAgainstAMillionSignedTerms() {
        agreesWithSignedSum(20, 6, 2);
    }

    @Test
    void thirtyPositiveFindingsKeepTheirDigits() {
        for (long seed = 0; seed < 3; seed++) {
            agreesWithElimination(new Layers(Shape.CLUSTERED, 0, 60, 50, 3, 5, 30, 20, false, 1e-4), seed);
        }
    }

    @Test
    void thirtyWeightedPositivesAndTwentyWeightedNegativesKeepTheirDigits() {
        for (long seed = 0; seed < 2; seed++) {
            agreesWithElimination(new Layers(Shape.CLUSTERED, 0, 80, 50, 3, 4, 30, 20, true, 1e-4), seed);
        }
    }

    private static void agreesWithElimination(Layers layers, long seed) {
        Puzzle puzzle = RandomNetworks.layered(layers, seed);
        Solution solution = Solver.of(puzzle.network(), puzzle.evidence(), Set.copyOf(puzzle.causes()))
                .solve(puzzle.evidence());
        BigDecimal truth = SignedElimination.evidence(puzzle.network(), puzzle.evidence(), DIGITS);
        enoughDigits(truth);
        assertThat(solution.logEvidence()).as("seed %d", seed).isCloseTo(log(truth), within(1e-10));
        for (String cause : puzzle.causes().subList(0, 4)) {
            BigDecimal with = SignedElimination.evidence(
                    puzzle.network(), puzzle.evidence().yes(cause), DIGITS);
            assertThat(solution.probability(cause))
                    .as("%s, seed %d", cause, seed)
                    .isCloseTo(with.divide(truth, new MathContext(DIGITS)).doubleValue(), within(1e-11));
        }
    }
}
