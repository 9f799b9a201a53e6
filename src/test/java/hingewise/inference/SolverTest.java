package hingewise.inference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hingewise.oracle.BruteForce;
import hingewise.oracle.RandomNetworks;
import hingewise.oracle.RandomNetworks.Layers;
import hingewise.oracle.RandomNetworks.Puzzle;
import hingewise.oracle.RandomNetworks.Shape;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class SolverTest {
    private static final Network CHAIN = Network.of(List.of(
            new Variable("a", NoisyOr.root(.25)),
            new Variable("b", new NoisyOr(0, List.of(new Link("a", .5)))),
            new Variable("c", new NoisyOr(0, List.of(new Link("b", .5))))));

    @Test
    void whatBearsNeitherOnTheEvidenceNorOnTheQuestionIsDropped() {
        Solver solver = Solver.of(CHAIN, Set.of("b"), Set.of());
        assertThat(solver.kept()).containsExactly("a", "b");
        assertThat(solver.solve(Evidence.none()).probabilities()).containsOnlyKeys("a", "b");
    }

    @Test
    void evidenceThatWasNotAnnouncedIsRefused() {
        Solver solver = Solver.of(CHAIN, Set.of("b"), Set.of("c"));
        assertThatThrownBy(() -> solver.solve(Evidence.none().yes("a")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("'a'");
        assertThatThrownBy(() -> Solver.of(CHAIN, Set.of("x"), Set.of())).hasMessageContaining("'x'");
        assertThatThrownBy(() -> Solver.of(CHAIN, Set.of(), Set.of("x"))).hasMessageContaining("'x'");
        assertThatThrownBy(() -> solver.solve(Evidence.none()).probability("x")).hasMessageContaining("'x'");
    }

    @Test
    void wantedVariablesMayBeSetAsWell() {
        Evidence evidence = Evidence.none().weighted("b", .2, .9);
        Solver solver = Solver.of(CHAIN, evidence, Set.of("a"));
        assertThat(solver.solve(evidence.yes("a")).probability("b")).isCloseTo(.2 / 1.1, within(1e-12));
        assertThat(solver.solve(evidence.no("a")).probability("b")).isZero();
    }

    @Test
    void impossibleEvidenceIsSaidToBeSo() {
        Evidence evidence = Evidence.none().no("a").yes("c");
        for (Solver solver :
                List.of(Solver.of(CHAIN, Set.of("a", "c"), Set.of("b")), Solver.of(CHAIN, evidence, Set.of("b")))) {
            assertThatThrownBy(() -> solver.solve(evidence))
                    .isInstanceOf(ImpossibleEvidenceException.class)
                    .hasMessageContaining("probability 0")
                    .hasMessageContaining("[a, c]");
        }
    }

    @Test
    void likelihoodsAboveOneCount() {
        Evidence evidence = Evidence.none().weighted("a", 6, 2);
        Solution solution = Solver.of(CHAIN, evidence, Set.of("a")).solve(evidence);
        assertThat(Math.exp(solution.logEvidence())).isCloseTo(.25 * 6 + .75 * 2, within(1e-12));
        assertThat(solution.probability("a")).isCloseTo(.5, within(1e-12));
    }

    @Test
    void hopelesslyEntangledNetworksAreRefusedWithTheSize() {
        List<Variable> variables = new ArrayList<>();
        Evidence evidence = Evidence.none();
        for (int i = 0; i < 30; i++) {
            variables.add(new Variable("c" + i, NoisyOr.root(.1)));
        }
        for (int i = 0; i < 30; i++) {
            for (int j = 0; j < i; j++) {
                String name = "f" + i + "," + j;
                variables.add(new Variable(name, Table.of(List.of("c" + i, "c" + j), .1, .5, .5, .2)));
                evidence = evidence.weighted(name, .9, .2);
            }
        }
        Network network = Network.of(variables);
        Evidence all = evidence;
        assertThatThrownBy(() -> Solver.of(network, all, Set.of()))
                .isInstanceOfSatisfying(
                        CliqueLimitException.class,
                        refusal -> assertThat(refusal.size()).isEqualTo(30))
                .hasMessageContaining("30 yes/no variables")
                .hasMessageContaining("limit for an exact answer is 22");
    }

    @Test
    void findingsOfTenToTwentyParents() {
        for (long seed = 0; seed < 4; seed++) {
            Layers layers = new Layers(Shape.RANDOM, 0, 17, 4, 10, 17, 2, 2, seed % 2 == 0, 1e-4);
            Puzzle puzzle = RandomNetworks.layered(layers, seed);
            BruteForce truth = new BruteForce(puzzle.network(), puzzle.evidence());
            Solver solver = Solver.of(puzzle.network(), puzzle.evidence(), Set.copyOf(puzzle.causes()));
            assertThat(solver.largestClique()).isLessThanOrEqualTo(8);
            Solution solution = solver.solve(puzzle.evidence());
            assertThat(solution.logEvidence()).isCloseTo(Math.log(truth.evidence()), within(1e-10));
            for (String cause : puzzle.causes()) {
                assertThat(solution.probability(cause))
                        .as("%s, seed %d", cause, seed)
                        .isCloseTo(truth.probabilities().get(cause), within(1e-11));
            }
        }
    }

    @Test
    void aSingleFindingOfTwentyParentsNeedsNoTableOfAMillionRows() {
        List<Variable> variables = new ArrayList<>();
        List<Link> links = new ArrayList<>();
        double silent = .99;
        for (int i = 0; i < 20; i++) {
            variables.add(new Variable("c" + i, NoisyOr.root(.02)));
            links.add(new Link("c" + i, .5));
            silent *= 1 - .02 * .5;
        }
        variables.add(new Variable("f", new NoisyOr(.01, links)));
        Network network = Network.of(variables);
        Solver solver = Solver.of(network, Set.of("f"), Set.of("c0"));
        assertThat(solver.largestClique()).isLessThanOrEqualTo(3);
        Solution solution = solver.solve(Evidence.none().yes("f"));
        assertThat(solution.logEvidence()).isCloseTo(Math.log(1 - silent), within(1e-12));
        double withCause = .02 * (1 - silent / (1 - .02 * .5) * .5);
        assertThat(solution.probability("c0")).isCloseTo(withCause / (1 - silent), within(1e-12));
        assertThat(solver.expanded().variables()).extracting(Variable::name).contains("f.upTo.c0");
    }

    @Test
    void solvingAgainGivesTheSameBits() {
        Puzzle puzzle = RandomNetworks.layered(new Layers(Shape.RANDOM, 2, 12, 14, 3, 6, 5, 8, true, 1e-4), 5);
        Set<String> wanted = Set.copyOf(puzzle.causes());
        Solver solver = Solver.of(puzzle.network(), puzzle.evidence(), wanted);
        Solution first = solver.solve(puzzle.evidence());
        solver.solve(puzzle.evidence().without("f1").yes("f2"));
        Solution again = solver.solve(puzzle.evidence());
        Solution elsewhere =
                Solver.of(puzzle.network(), puzzle.evidence(), wanted).solve(puzzle.evidence());
        assertThat(again.probabilities()).isEqualTo(first.probabilities());
        assertThat(elsewhere.probabilities()).isEqualTo(first.probabilities());
        assertThat(again.logEvidence()).isEqualTo(first.logEvidence());
    }
}
