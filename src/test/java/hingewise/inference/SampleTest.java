package hingewise.inference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hingewise.oracle.BruteForce;
import hingewise.oracle.RandomNetworks;
import hingewise.oracle.RandomNetworks.Layers;
import hingewise.oracle.RandomNetworks.Puzzle;
import hingewise.oracle.RandomNetworks.Shape;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class SampleTest {
    private static final int DRAWS = 40_000;

    /** Five standard errors: a right sampler fails one such comparison in two million. */
    private static double bound(double p) {
        return 5 * Math.sqrt(p * (1 - p) / DRAWS) + 1e-4;
    }

    @Test
    void singleAndJointFrequenciesAreThoseOfEnumeration() {
        for (long seed = 0; seed < 4; seed++) {
            Puzzle puzzle =
                    RandomNetworks.layered(new Layers(Shape.RANDOM, 1, 5, 6, 2, 4, 2, 3, seed % 2 == 0, 1e-3), seed);
            BruteForce truth = new BruteForce(puzzle.network(), puzzle.evidence());
            Solver solver = Solver.of(puzzle.network(), puzzle.evidence(), Set.copyOf(puzzle.causes()));
            List<Map<String, Boolean>> draws =
                    solver.solve(puzzle.evidence()).sample(new SplittableRandom(seed), DRAWS);
            for (String name : solver.kept()) {
                double share = draws.stream().filter(draw -> draw.get(name)).count() / (double) DRAWS;
                double p = truth.probabilities().get(name);
                assertThat(share).as("%s, seed %d", name, seed).isCloseTo(p, within(bound(p)));
            }
            Set<String> over = Set.of("c0", "c1", "f0", "f3");
            Map<Set<String>, Double> shares = new HashMap<>();
            for (Map<String, Boolean> draw : draws) {
                Set<String> yes = new HashSet<>(over);
                yes.removeIf(name -> !draw.get(name));
                shares.merge(yes, 1.0 / DRAWS, Double::sum);
            }
            long shown = seed;
            truth.combinations(over)
                    .forEach((yes, p) -> assertThat(shares.getOrDefault(yes, 0.0))
                            .as("%s, seed %d", yes, shown)
                            .isCloseTo(p, within(bound(p))));
        }
    }

    @Test
    void theSameSeedDrawsTheSame() {
        Puzzle puzzle = RandomNetworks.layered(new Layers(Shape.RANDOM, 1, 5, 6, 2, 4, 2, 3, true, 1e-3), 9);
        Solution solution = Solver.of(puzzle.network(), puzzle.evidence(), Set.copyOf(puzzle.causes()))
                .solve(puzzle.evidence());
        assertThat(solution.sample(new SplittableRandom(3), 50))
                .isEqualTo(solution.sample(new SplittableRandom(3), 50))
                .isNotEqualTo(solution.sample(new SplittableRandom(4), 50));
        assertThat(solution.sample(new SplittableRandom(3), 0)).isEmpty();
    }
}
