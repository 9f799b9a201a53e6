package hingewise.inference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hingewise.oracle.RandomNetworks;
import hingewise.oracle.RandomNetworks.Layers;
import hingewise.oracle.RandomNetworks.Puzzle;
import hingewise.oracle.RandomNetworks.Shape;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class OutlookTest {
    @Test
    void everyOpenFindingAgreesWithSolvingForBothOutcomes() {
        for (long seed = 0; seed < 20; seed++) {
            Layers layers = new Layers(Shape.CLUSTERED, 2, 16, 24, 3, 6, 5, 8, seed % 2 == 0, 1e-4);
            Puzzle puzzle = RandomNetworks.layered(layers, seed);
            Set<String> wanted = Set.copyOf(puzzle.causes());
            Solution solution =
                    Solver.of(puzzle.network(), puzzle.evidence(), wanted).solve(puzzle.evidence());
            for (String finding : puzzle.findings().subList(13, 24)) {
                Outlook outlook = solution.outlook(finding);
                Solution yes = solve(puzzle, puzzle.evidence().yes(finding), wanted);
                Solution no = solve(puzzle, puzzle.evidence().no(finding), wanted);
                assertThat(outlook.yes())
                        .as("%s, seed %d", finding, seed)
                        .isCloseTo(Math.exp(yes.logEvidence() - solution.logEvidence()), within(1e-12));
                assertThat(outlook.ifNo()).containsOnlyKeys(wanted);
                for (String cause : wanted) {
                    String what = finding + " and " + cause + ", seed " + seed;
                    assertThat(outlook.ifYes().get(cause)).as(what).isCloseTo(yes.probability(cause), within(1e-10));
                    assertThat(outlook.ifNo().get(cause)).as(what).isCloseTo(no.probability(cause), within(1e-12));
                }
            }
        }
    }

    private static Solution solve(Puzzle puzzle, Evidence evidence, Set<String> wanted) {
        return Solver.of(puzzle.network(), evidence, wanted).solve(evidence);
    }

    @Test
    void aLeakOfAHundredThousandthKeepsNineDecimals() {
        Network network = Network.of(List.of(
                new Variable("a", NoisyOr.root(1e-5)),
                new Variable("f", new NoisyOr(1e-5, List.of(new Link("a", .5))))));
        Outlook outlook =
                Solver.of(network, Set.of(), Set.of("a")).solve(Evidence.none()).outlook("f");
        double yes = 1e-5 + 1e-5 * .5 * (1 - 1e-5);
        assertThat(outlook.yes()).isCloseTo(yes, within(1e-15));
        double withCause = 1e-5 * (1e-5 + .5 * (1 - 1e-5));
        assertThat(outlook.ifYes().get("a")).isCloseTo(withCause / yes, within(1e-9));
    }

    @Test
    void certainParentsAndCertainOutcomes() {
        Network network = Network.of(List.of(
                new Variable("a", NoisyOr.root(.5)),
                new Variable("always", new NoisyOr(.2, List.of(new Link("a", 1)))),
                new Variable("never", new NoisyOr(0, List.of(new Link("a", 0))))));
        Evidence evidence = Evidence.none().yes("a");
        Solution solution = Solver.of(network, evidence, Set.of("a")).solve(evidence);
        assertThat(solution.outlook("always").yes()).isEqualTo(1);
        assertThat(solution.outlook("always").ifNo()).containsEntry("a", 1.0);
        assertThat(solution.outlook("never").yes()).isEqualTo(0);
        assertThat(solution.outlook("never").ifYes()).containsEntry("a", 1.0);
    }

    @Test
    void whatHasNoOutlookIsNamed() {
        Network network = Network.of(List.of(
                new Variable("a", NoisyOr.root(.5)),
                new Variable("b", NoisyOr.root(.5)),
                new Variable("t", Table.of(List.of("a"), .1, .9)),
                new Variable("f", new NoisyOr(.1, List.of(new Link("b", .5))))));
        Solution solution = Solver.of(network, Set.of(), Set.of("a")).solve(Evidence.none());
        assertThatThrownBy(() -> solution.outlook("t")).hasMessageContaining("'t' is not a noisy-OR");
        assertThatThrownBy(() -> solution.outlook("f")).hasMessageContaining("'b'");
        assertThatThrownBy(() -> solution.outlook("a")).hasMessageContaining("'a' is already part");
        assertThatThrownBy(() -> solution.outlook("x")).hasMessageContaining("'x'");
    }
}
