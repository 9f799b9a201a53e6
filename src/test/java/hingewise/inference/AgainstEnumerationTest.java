package hingewise.inference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hingewise.oracle.BruteForce;
import hingewise.oracle.RandomNetworks;
import hingewise.oracle.RandomNetworks.Layers;
import hingewise.oracle.RandomNetworks.Puzzle;
import hingewise.oracle.RandomNetworks.Shape;
import java.util.HashSet;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Small random networks, every answer recomputed by enumeration of all assignments. */
class AgainstEnumerationTest {
    private static final int NETWORKS = 60;

    @Test
    void tangledNetworksWithMixedEvidence() {
        for (long seed = 0; seed < NETWORKS; seed++) {
            agrees(RandomNetworks.tangled(13, seed), seed);
        }
    }

    @Test
    void layersWithHistoriesAndCertainFindings() {
        for (long seed = 0; seed < NETWORKS; seed++) {
            agrees(RandomNetworks.layered(new Layers(Shape.RANDOM, 2, 6, 7, 2, 5, 3, 3, false, 1e-4), seed), seed);
        }
    }

    @Test
    void layersWithHistoriesAndWeightedFindings() {
        for (long seed = 0; seed < NETWORKS; seed++) {
            agrees(RandomNetworks.layered(new Layers(Shape.CLUSTERED, 2, 6, 8, 2, 5, 3, 4, true, 1e-4), seed), seed);
        }
    }

    private static void agrees(Puzzle puzzle, long seed) {
        BruteForce truth = new BruteForce(puzzle.network(), puzzle.evidence());
        Set<String> all = new HashSet<>(puzzle.causes());
        Set<String> observed = puzzle.evidence().findings().keySet();
        agrees(truth, Solver.of(puzzle.network(), puzzle.evidence(), Set.of("" + first(puzzle))), puzzle, seed);
        agrees(truth, Solver.of(puzzle.network(), puzzle.evidence(), all), puzzle, seed);
        agrees(truth, Solver.of(puzzle.network(), observed, all), puzzle, seed);
    }

    private static String first(Puzzle puzzle) {
        return puzzle.causes().get(0);
    }

    private static void agrees(BruteForce truth, Solver solver, Puzzle puzzle, long seed) {
        Solution solution = solver.solve(puzzle.evidence());
        assertThat(Math.exp(solution.logEvidence()) / truth.evidence())
                .as("P(e), seed %d", seed)
                .isCloseTo(1, within(1e-11));
        solution.probabilities()
                .forEach((name, p) -> assertThat(p)
                        .as("%s, seed %d", name, seed)
                        .isCloseTo(truth.probabilities().get(name), within(1e-11)));
    }

    @Test
    void oneSolverServesEvidenceOfEveryKind() {
        for (long seed = 0; seed < NETWORKS; seed++) {
            Puzzle puzzle = RandomNetworks.layered(new Layers(Shape.RANDOM, 1, 5, 6, 2, 4, 3, 3, true, 1e-4), seed);
            Solver solver = Solver.of(puzzle.network(), puzzle.evidence(), Set.copyOf(puzzle.causes()));
            SplittableRandom random = new SplittableRandom(seed);
            Evidence other = Evidence.none();
            for (int f = 0; f < 6; f++) {
                other = switch (random.nextInt(4)) {
                    case 0 -> other.yes("f" + f);
                    case 1 -> other.no("f" + f);
                    case 2 -> other.weighted("f" + f, random.nextDouble(), random.nextDouble());
                    default -> other;
                };
            }
            agrees(
                    new BruteForce(puzzle.network(), other),
                    solver,
                    new Puzzle(puzzle.network(), other, puzzle.causes(), puzzle.findings()),
                    seed);
        }
    }
}
