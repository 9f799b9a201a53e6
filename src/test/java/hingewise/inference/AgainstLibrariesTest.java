package hingewise.inference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hingewise.oracle.Answer;
import hingewise.oracle.GraphmodOracle;
import hingewise.oracle.RandomNetworks;
import hingewise.oracle.RandomNetworks.Layers;
import hingewise.oracle.RandomNetworks.Puzzle;
import hingewise.oracle.RandomNetworks.Shape;
import hingewise.oracle.WekaOracle;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * Larger random networks, recomputed by two general-purpose libraries: Weka's junction tree and the elimination of the
 * graphical-models library. Neither knows noisy-OR, so they are given the pruned network with full tables.
 */
class AgainstLibrariesTest {
    @Test
    void aHundredNetworksWithCertainFindings() {
        for (long seed = 0; seed < 100; seed++) {
            agrees(RandomNetworks.layered(new Layers(Shape.CLUSTERED, 1, 12, 20, 2, 4, 6, 8, false, 1e-4), seed), seed);
        }
    }

    @Test
    void aHundredNetworksWithTwentyWeightedNegatives() {
        for (long seed = 100; seed < 200; seed++) {
            agrees(RandomNetworks.layered(new Layers(Shape.CLUSTERED, 1, 8, 26, 2, 3, 4, 20, true, 1e-4), seed), seed);
        }
    }

    private static void agrees(Puzzle puzzle, long seed) {
        Solver solver = Solver.of(puzzle.network(), puzzle.evidence(), Set.copyOf(puzzle.causes()));
        Solution solution = solver.solve(puzzle.evidence());
        Network pruned = Network.of(
                solver.kept().stream().map(puzzle.network()::variable).toList());
        Answer weka = WekaOracle.solve(pruned, puzzle.evidence());
        assertThat(solution.logEvidence())
                .as("log P(e), Weka, seed %d", seed)
                .isCloseTo(weka.logEvidence(), within(1e-9));
        solution.probabilities()
                .forEach((name, p) -> assertThat(p)
                        .as("%s, Weka, seed %d", name, seed)
                        .isCloseTo(weka.probabilities().get(name), within(1e-9)));
        GraphmodOracle.solve(
                        solver.expanded(), puzzle.evidence(), puzzle.causes().subList(0, 3))
                .forEach((name, p) -> assertThat(solution.probability(name))
                        .as("%s, graphmod, seed %d", name, seed)
                        .isCloseTo(p, within(1e-9)));
    }

    @Test
    void theExpandedNetworkHasTheSameAnswersAndSoHaveItsAuxiliaries() {
        for (long seed = 0; seed < 20; seed++) {
            Puzzle puzzle = RandomNetworks.layered(new Layers(Shape.RANDOM, 1, 6, 6, 3, 5, 2, 3, true, 1e-4), seed);
            Solver solver = Solver.of(puzzle.network(), puzzle.evidence(), Set.copyOf(puzzle.causes()));
            Solution solution = solver.solve(puzzle.evidence());
            Answer weka = WekaOracle.solve(solver.expanded(), puzzle.evidence());
            assertThat(solver.expanded().variables())
                    .hasSizeGreaterThan(solver.kept().size());
            for (Variable variable : solver.expanded().variables()) {
                assertThat(solution.probability(variable.name()))
                        .as("%s, seed %d", variable.name(), seed)
                        .isCloseTo(weka.probabilities().get(variable.name()), within(1e-9));
            }
        }
    }
}
