package hingewise.decision;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * What following the planner costs, against the least that anything can cost: both reckoned exactly on random problems, the
 * planner as it is shipped. The optimum is found by dynamic programming.
 */
class NearOptimumTest {
    private static final int FIRST_SEED = 20261125;

    /** How far above the optimum, as a ratio, and in which model. */
    private record Ratio(long seed, double ratio) {}

    @Test
    void oneHundredRandomProblemsAreSolvedNearTheOptimum() {
        near(100);
    }

    @Test
    @Tag("slow")
    void oneThousandRandomProblemsAreSolvedNearTheOptimum() {
        near(1000);
    }

    private static void near(int models) {
        List<Ratio> ratios = new ArrayList<>();
        int acting = 0;
        for (long seed = FIRST_SEED; seed < FIRST_SEED + models; seed++) {
            Small small = new RandomModels(seed).next();
            double optimum = new ExactSolver(small).optimum();
            acting += optimum < small.stop(small.start()) * (1 - 1e-9) ? 1 : 0;
            ratios.add(new Ratio(seed, Followed.cost(small, seed) / optimum));
        }
        List<Double> sorted = new ArrayList<>(ratios.stream().map(Ratio::ratio).toList());
        Collections.sort(sorted);
        Ratio worst = ratios.stream()
                .max(java.util.Comparator.comparingDouble(Ratio::ratio))
                .orElseThrow();
        double mean = sorted.stream().mapToDouble(r -> r).average().orElseThrow();
        System.out.printf(
                Locale.ROOT,
                "%d random problems, in %d of which something is worth doing: expected cost over the optimum: mean %.5f,"
                        + " median %.5f, 90 %% %.5f, 99 %% %.5f, worst %.5f (seed %d); above 1.01: %d, above 1.05: %d%n",
                models,
                acting,
                mean,
                sorted.get(models / 2),
                sorted.get(models * 9 / 10),
                sorted.get(models * 99 / 100),
                worst.ratio(),
                worst.seed(),
                sorted.stream().filter(r -> r > 1.01).count(),
                sorted.stream().filter(r -> r > 1.05).count());
        assertThat(acting).isGreaterThan(models / 2);
        assertThat(sorted.get(0)).as("nothing is below the optimum").isGreaterThan(1 - 1e-9);
        assertThat(mean).as("mean").isLessThanOrEqualTo(1.01);
        assertThat(worst.ratio()).as("worst, seed %d", worst.seed()).isLessThanOrEqualTo(1.10);
    }
}
