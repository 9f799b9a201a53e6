package hingewise.inference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hingewise.oracle.RandomNetworks;
import hingewise.oracle.RandomNetworks.Layers;
import hingewise.oracle.RandomNetworks.Puzzle;
import hingewise.oracle.RandomNetworks.Shape;
import hingewise.oracle.WekaOracle;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Everything written is read back by Weka's own reader of the format and solved there. */
class XmlbifTest {
    @Test
    void wekaReadsTheFileAndFindsTheSameAnswers() throws IOException {
        for (long seed = 0; seed < 10; seed++) {
            Puzzle puzzle = RandomNetworks.layered(new Layers(Shape.RANDOM, 1, 5, 6, 2, 4, 2, 3, true, 1e-4), seed);
            Evidence evidence = puzzle.evidence().no("f5");
            agreesAfterReading(puzzle.network(), evidence, Set.copyOf(puzzle.causes()), seed);
        }
    }

    @Test
    void wekaReadsTablesOverSeveralParentsInTheSameOrder() throws IOException {
        for (long seed = 0; seed < 10; seed++) {
            Puzzle puzzle = RandomNetworks.tangled(8, seed);
            agreesAfterReading(puzzle.network(), puzzle.evidence(), Set.copyOf(puzzle.causes()), seed);
        }
    }

    private static void agreesAfterReading(Network network, Evidence evidence, Set<String> wanted, long seed)
            throws IOException {
        Solver solver = Solver.of(network, evidence, wanted);
        Solution solution = solver.solve(evidence);
        StringBuilder file = new StringBuilder();
        Xmlbif.write(solver.expanded(), evidence, file);
        Map<String, Double> read =
                WekaOracle.solveFile(file.toString(), Xmlbif.observations(solver.expanded(), evidence));
        for (Variable variable : solver.expanded().variables()) {
            assertThat(solution.probability(variable.name()))
                    .as("%s, seed %d", variable.name(), seed)
                    .isCloseTo(read.get(variable.name()), within(1e-9));
        }
    }

    @Test
    void namesBecomeSafeAndStayDifferent() {
        Network network = Network.of(List.of(
                new Variable("a b", NoisyOr.root(.5)),
                new Variable("a_b", NoisyOr.root(.5)),
                new Variable("<3&\u0007", NoisyOr.root(.5)),
                new Variable("a_b.report", NoisyOr.root(.5))));
        Evidence evidence = Evidence.none().weighted("a b", 2, 1);
        assertThat(Xmlbif.names(network, evidence))
                .containsExactly(
                        Map.entry("a b", "a_b"),
                        Map.entry("a_b", "a_b_2"),
                        Map.entry("<3&\u0007", "v_3__"),
                        Map.entry("a_b.report", "a_b.report"),
                        Map.entry("report on a b", "a_b.report_2"));
        assertThat(Xmlbif.observations(network, evidence.no("a_b"))).containsExactly("a_b.report_2=yes", "a_b_2=no");
    }

    @Test
    void likelihoodsAboveOneAreScaledInProportion() throws IOException {
        StringBuilder file = new StringBuilder();
        Xmlbif.write(
                Network.of(List.of(new Variable("a", NoisyOr.root(.25)))),
                Evidence.none().weighted("a", 4, 1),
                file);
        assertThat(file).contains("<FOR>a.report</FOR><GIVEN>a</GIVEN><TABLE>0.75 0.25 0.0 1.0 </TABLE>");
    }

    @Test
    void aNoisyOrWithParentsIsRefused() {
        Network network = Network.of(List.of(
                new Variable("a", NoisyOr.root(.25)), new Variable("b", new NoisyOr(.1, List.of(new Link("a", .5))))));
        assertThatThrownBy(() -> Xmlbif.write(network, Evidence.none(), new StringBuilder()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("'b'")
                .hasMessageContaining("expanded");
        assertThatThrownBy(() -> Xmlbif.observations(network, Evidence.none().yes("c")))
                .hasMessageContaining("'c'");
    }
}
