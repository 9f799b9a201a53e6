package hingewise.inference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** A two-layer noisy-OR network, every value worked by enumeration. */
class TwoLayerExampleTest {
    private static final Network NETWORK = Network.of(List.of(
            new Variable("D", NoisyOr.root(.1)),
            new Variable("B", NoisyOr.root(.2)),
            new Variable("P", NoisyOr.root(.05)),
            new Variable("noCharge", new NoisyOr(.02, List.of(new Link("B", .6), new Link("P", .9)))),
            new Variable("blackScreen", new NoisyOr(.01, List.of(new Link("D", .8), new Link("B", .5)))),
            new Variable("shortRuntime", new NoisyOr(.05, List.of(new Link("B", .7)))),
            new Variable("touchDead", new NoisyOr(.03, List.of(new Link("D", .6))))));

    private static final Evidence EVIDENCE = Evidence.none().yes("noCharge").yes("blackScreen");
    private static final Set<String> CAUSES = Set.of("D", "B", "P");

    private static Solution solution(Evidence evidence) {
        return Solver.of(NETWORK, evidence, CAUSES).solve(evidence);
    }

    private static void posteriors(Map<String, Double> found, double d, double b, double p) {
        assertThat(found.get("D")).isCloseTo(d, within(1e-10));
        assertThat(found.get("B")).isCloseTo(b, within(1e-10));
        assertThat(found.get("P")).isCloseTo(p, within(1e-10));
    }

    @Test
    void posteriorsOfTheCauses() {
        assertThat(Math.exp(solution(EVIDENCE).logEvidence())).isCloseTo(.0727188848, within(1e-10));
        posteriors(solution(EVIDENCE).probabilities(), .2115913747, .9370978252, .1162126293);
    }

    @Test
    void aFurtherPositiveFindingByOutlookAndByEvidence() {
        Outlook outlook = solution(EVIDENCE).outlook("touchDead");
        assertThat(outlook.yes()).isCloseTo(.1531461801, within(1e-10));
        posteriors(outlook.ifYes(), .8455576316, .7727505111, .2192259813);
        posteriors(solution(EVIDENCE.yes("touchDead")).probabilities(), .8455576316, .7727505111, .2192259813);
    }

    @Test
    void aFurtherNegativeFindingByOutlookAndByEvidence() {
        Outlook outlook = solution(EVIDENCE).outlook("shortRuntime");
        assertThat(1 - outlook.yes()).isCloseTo(.3268299462, within(1e-10));
        posteriors(outlook.ifNo(), .2995838627, .8171615952, .1913889907);
        posteriors(solution(EVIDENCE.no("shortRuntime")).probabilities(), .2995838627, .8171615952, .1913889907);
    }

    @Test
    void theMostProbableSetsInOrder() {
        List<Combination> best = solution(EVIDENCE).mostProbable(CAUSES, 4);
        assertThat(best)
                .extracting(Combination::yes)
                .containsExactly(Set.of("B"), Set.of("D", "B"), Set.of("B", "P"), Set.of("D", "P"));
        double[] chances = {.7220110724, .1431313479, .0600509209, .0397918093};
        for (int i = 0; i < 4; i++) {
            assertThat(best.get(i).probability()).isCloseTo(chances[i], within(1e-10));
        }
    }

    /** Information = entropy of the outlook less its mean entropy given the most probable sets, from exact joints. */
    @Test
    void theInformationOfEachOpenFindingAboutTheCauses() {
        assertThat(information("touchDead")).isCloseTo(.2605301211, within(1e-9));
        assertThat(information("shortRuntime")).isCloseTo(.0856978363, within(1e-9));
    }

    private static double information(String finding) {
        double now = entropy(solution(EVIDENCE));
        double yes = solution(EVIDENCE).outlook(finding).yes();
        return now
                - yes * entropy(solution(EVIDENCE.yes(finding)))
                - (1 - yes) * entropy(solution(EVIDENCE.no(finding)));
    }

    private static double entropy(Solution solution) {
        return solution.mostProbable(CAUSES, 8).stream()
                .mapToDouble(Combination::probability)
                .map(p -> -p * Math.log(p) / Math.log(2))
                .sum();
    }
}
