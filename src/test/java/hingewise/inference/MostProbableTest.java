package hingewise.inference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hingewise.oracle.BruteForce;
import hingewise.oracle.RandomNetworks;
import hingewise.oracle.RandomNetworks.Layers;
import hingewise.oracle.RandomNetworks.Puzzle;
import hingewise.oracle.RandomNetworks.Shape;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

class MostProbableTest {
    @Test
    void theBestSetsOfCausesAreThoseOfEnumerationWithHistoriesSummedOut() {
        for (long seed = 0; seed < 60; seed++) {
            Layers layers = new Layers(Shape.RANDOM, 3, 7, 7, 2, 5, 3, 3, seed % 2 == 0, 1e-3);
            agrees(RandomNetworks.layered(layers, seed), 8, seed);
        }
    }

    @Test
    void tangledNetworksOverHalfOfTheirVariables() {
        for (long seed = 0; seed < 60; seed++) {
            Puzzle puzzle = RandomNetworks.tangled(12, seed);
            Set<String> half = new HashSet<>(puzzle.causes().subList(0, 6));
            agrees(new Puzzle(puzzle.network(), puzzle.evidence(), List.copyOf(half), List.of()), 10, seed);
        }
    }

    private static void agrees(Puzzle puzzle, int count, long seed) {
        Set<String> over = Set.copyOf(puzzle.causes());
        List<Combination> best = Solver.of(puzzle.network(), puzzle.evidence(), over)
                .solve(puzzle.evidence())
                .mostProbable(over, count);
        Map<Set<String>, Double> truth = new BruteForce(puzzle.network(), puzzle.evidence()).combinations(over);
        List<Double> expected = truth.values().stream()
                .filter(p -> p > 0)
                .sorted(Comparator.reverseOrder())
                .limit(count)
                .toList();
        assertThat(best).as("seed %d", seed).hasSameSizeAs(expected);
        assertThat(best).as("seed %d", seed).extracting(Combination::yes).doesNotHaveDuplicates();
        for (int i = 0; i < best.size(); i++) {
            Combination found = best.get(i);
            assertThat(found.probability()).as("rank %d, seed %d", i, seed).isCloseTo(expected.get(i), within(1e-12));
            assertThat(truth.get(found.yes()))
                    .as("rank %d, seed %d", i, seed)
                    .isCloseTo(expected.get(i), within(1e-12));
        }
    }

    @Test
    void fiftyCausesWithHistoriesAddUpToNoMoreThanOneAndDescend() {
        for (long seed = 0; seed < 5; seed++) {
            Layers layers = new Layers(Shape.CLUSTERED, 4, 50, 60, 3, 6, 8, 20, true, 1e-4);
            Puzzle puzzle = RandomNetworks.layered(layers, seed);
            Set<String> over = Set.copyOf(puzzle.causes());
            Solution solution =
                    Solver.of(puzzle.network(), puzzle.evidence(), over).solve(puzzle.evidence());
            List<Combination> best = solution.mostProbable(over, 5);
            assertThat(best).hasSize(5).isSortedAccordingTo(Comparator.comparingDouble(c -> -c.probability()));
            assertThat(best.stream().mapToDouble(Combination::probability).sum())
                    .isLessThanOrEqualTo(1 + 1e-12);
            assertThat(best.get(0).probability())
                    .as("seed %d", seed)
                    .isCloseTo(exact(puzzle, over, best.get(0)), within(1e-12));
        }
    }

    /** P(evidence, assignment) / P(evidence), from two evidence probabilities. */
    private static double exact(Puzzle puzzle, Set<String> over, Combination combination) {
        Evidence both = puzzle.evidence();
        for (String name : over) {
            both = combination.yes().contains(name) ? both.yes(name) : both.no(name);
        }
        double with = Solver.of(puzzle.network(), both, Set.of()).solve(both).logEvidence();
        double without = Solver.of(puzzle.network(), puzzle.evidence(), Set.of())
                .solve(puzzle.evidence())
                .logEvidence();
        return Math.exp(with - without);
    }

    @Test
    void impossibleAssignmentsAreLeftOut() {
        Network network = Network.of(
                List.of(new Variable("a", NoisyOr.root(.5)), new Variable("b", Table.of(List.of("a"), 0, 1))));
        Solution solution = Solver.of(network, Set.of(), Set.of("a", "b")).solve(Evidence.none());
        assertThat(solution.mostProbable(Set.of("a", "b"), 4))
                .extracting(Combination::yes)
                .containsExactlyInAnyOrder(Set.of(), Set.of("a", "b"));
    }

    @Test
    void badRequestsAreNamed() {
        Network network = Network.of(List.of(
                new Variable("a", NoisyOr.root(.5)),
                new Variable("b", new NoisyOr(.1, List.of(new Link("a", .5)))),
                new Variable("c", NoisyOr.root(.5))));
        Evidence evidence = Evidence.none().weighted("b", .1, .9);
        Solution solution = Solver.of(network, evidence, Set.of("a")).solve(evidence);
        assertThatThrownBy(() -> solution.mostProbable(Set.of("a"), 0)).hasMessageContaining("0 combinations");
        assertThatThrownBy(() -> solution.mostProbable(Set.of("c"), 1)).hasMessageContaining("'c'");
        assertThatThrownBy(() -> solution.mostProbable(Set.of("b"), 1)).hasMessageContaining("'b' is observed");
    }
}
