package hingewise.inference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Networks and values from textbooks and papers; the source stands beside each. */
class PublishedNetworksTest {
    /** Lauritzen & Spiegelhalter 1988, JRSS B 50:157-224. */
    private static final Network ASIA = Network.of(List.of(
            new Variable("asia", NoisyOr.root(.01)),
            new Variable("smoke", NoisyOr.root(.5)),
            new Variable("tub", Table.of(List.of("asia"), .01, .05)),
            new Variable("lung", Table.of(List.of("smoke"), .01, .1)),
            new Variable("bronc", Table.of(List.of("smoke"), .3, .6)),
            new Variable("either", Table.of(List.of("tub", "lung"), 0, 1, 1, 1)),
            new Variable("xray", Table.of(List.of("either"), .05, .98)),
            new Variable("dysp", Table.of(List.of("either", "bronc"), .1, .8, .7, .9))));

    /** Russell & Norvig, Artificial Intelligence: A Modern Approach, chapter on Bayesian networks. */
    @Test
    void feverFollowsTheInhibitorsOfItsCauses() {
        Network fever = Network.of(List.of(
                new Variable("cold", NoisyOr.root(.1)),
                new Variable("flu", NoisyOr.root(.1)),
                new Variable("malaria", NoisyOr.root(.1)),
                new Variable(
                        "fever",
                        new NoisyOr(0, List.of(new Link("cold", .4), new Link("flu", .8), new Link("malaria", .9))))));
        double[] noFever = {1.0, .1, .2, .02, .6, .06, .12, .012};
        Solver solver = Solver.of(fever, Set.of("cold", "flu", "malaria"), Set.of("fever"));
        for (int row = 0; row < 8; row++) {
            Evidence evidence = Evidence.none();
            evidence = (row & 4) > 0 ? evidence.yes("cold") : evidence.no("cold");
            evidence = (row & 2) > 0 ? evidence.yes("flu") : evidence.no("flu");
            evidence = (row & 1) > 0 ? evidence.yes("malaria") : evidence.no("malaria");
            assertThat(solver.solve(evidence).probability("fever"))
                    .as("row %d", row)
                    .isCloseTo(1 - noFever[row], within(1e-12));
        }
    }

    /** Lauritzen & Spiegelhalter 1988; second row from the paper, the others by enumeration and three libraries. */
    @Test
    void asiaGivesThePublishedPosteriors() {
        Evidence none = Evidence.none();
        asia(none, 1, .5, .0104, .055, .45, .064828, .110290, .435971);
        asia(none.yes("asia").yes("dysp"), .004501375, .625920, .087751, .099525, .811402, .182300, .219539, 1);
        asia(
                none.yes("asia").yes("smoke").yes("xray").yes("dysp"),
                .000693760,
                1,
                .289581,
                .579163,
                .700920,
                .839786,
                1,
                1);
        asia(
                none.no("asia").yes("smoke").no("xray").yes("dysp"),
                .218761092,
                1,
                .000371,
                .003711,
                .922007,
                .004045,
                0,
                1);
    }

    private static void asia(
            Evidence evidence,
            double chance,
            double smoke,
            double tub,
            double lung,
            double bronc,
            double either,
            double xray,
            double dysp) {
        Solution solution = Solver.of(ASIA, evidence, Set.of("smoke", "tub", "lung", "bronc", "either", "xray", "dysp"))
                .solve(evidence);
        assertThat(Math.exp(solution.logEvidence())).isCloseTo(chance, within(5e-10));
        Map.of("smoke", smoke, "tub", tub, "lung", lung, "bronc", bronc, "either", either, "xray", xray, "dysp", dysp)
                .forEach((name, p) ->
                        assertThat(solution.probability(name)).as(name).isCloseTo(p, within(5.1e-7)));
    }

    /** Same network; values by enumeration and three libraries. */
    @Test
    void asiaTakesAnUncertainXray() {
        Evidence evidence = Evidence.none().yes("dysp").weighted("xray", .8, .2);
        Solution solution =
                Solver.of(ASIA, evidence, Set.of("tub", "lung", "bronc")).solve(evidence);
        assertThat(solution.probability("tub")).isCloseTo(.049957, within(5.1e-7));
        assertThat(solution.probability("lung")).isCloseTo(.272403, within(5.1e-7));
        assertThat(solution.probability("bronc")).isCloseTo(.784203, within(5.1e-7));
    }

    /** Murphy, A Brief Introduction to Graphical Models and Bayesian Networks (1998). */
    @Test
    void rainExplainsTheSprinklerAway() {
        Network sprinkler = Network.of(List.of(
                new Variable("cloudy", NoisyOr.root(.5)),
                new Variable("sprinkler", Table.of(List.of("cloudy"), .5, .1)),
                new Variable("rain", Table.of(List.of("cloudy"), .2, .8)),
                new Variable("wet", Table.of(List.of("sprinkler", "rain"), 0, .9, .9, .99))));
        Solver solver = Solver.of(sprinkler, Set.of("wet", "rain"), Set.of("sprinkler"));
        Evidence wet = Evidence.none().yes("wet");
        assertThat(solver.solve(wet).probability("sprinkler")).isCloseTo(.430, within(5e-4));
        assertThat(solver.solve(wet.yes("rain")).probability("sprinkler")).isCloseTo(.1945, within(5e-5));
    }
}
