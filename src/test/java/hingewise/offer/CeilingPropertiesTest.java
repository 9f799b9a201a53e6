package hingewise.offer;

import static org.assertj.core.api.Assertions.assertThat;

import hingewise.inference.Evidence;
import hingewise.inference.Link;
import hingewise.inference.Network;
import hingewise.inference.NoisyOr;
import hingewise.inference.Solver;
import hingewise.inference.Variable;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/**
 * What holds of the most to pay by expected profit. All ways a phone may be are enumerated, with their exact chances.
 * That good news never lowers it does not hold and is not tested: "never opened" on a phone without a picture makes a
 * loose cable less likely, and so the panel likelier.
 */
class CeilingPropertiesTest {
    private static final int CAUSES = 4;
    private static final int SIGNS = 3;

    @Test
    void withoutPositiveEvidenceANegativeReportNeverLowersIt() {
        int raised = 0;
        for (long seed = 1; seed <= 200; seed++) {
            Random random = new Random(seed);
            Network network = network(random);
            List<Choice> choices = choices(random);
            Evidence evidence = Evidence.none();
            long before = ceiling(network, evidence, choices);
            for (int s = 0; s < SIGNS; s++) {
                double miss = .01 + .5 * random.nextDouble();
                double clear = .8 + .19 * random.nextDouble();
                evidence = evidence.weighted("sign" + s, miss, clear);
                long after = ceiling(network, evidence, choices);
                assertThat(after).as("seed %d, report %d", seed, s).isGreaterThanOrEqualTo(before);
                raised += after > before ? 1 : 0;
                before = after;
            }
        }
        assertThat(raised).isGreaterThan(100);
    }

    @Test
    void betterInformationNeverLowersIt() {
        int raised = 0;
        for (long seed = 1; seed <= 200; seed++) {
            Random random = new Random(seed);
            double[] prior = chances(network(random), Evidence.none());
            List<Choice> choices = choices(random);
            double[] yes = random.doubles(prior.length, .02, .98).toArray();
            double blur = random.nextDouble();
            double[] blurred = yes.clone();
            for (int w = 0; w < blurred.length; w++) {
                blurred[w] = blur * yes[w] + (1 - blur) * .5;
            }
            Knowledge none = Knowledge.none(prior);
            long nothing = ceiling(none, choices);
            long little = ceiling(none.with("blurred", blurred, 0), choices);
            long more = ceiling(none.with("sharp", yes, 0), choices);
            assertThat(little).as("seed %d", seed).isGreaterThanOrEqualTo(nothing);
            assertThat(more).as("seed %d", seed).isGreaterThanOrEqualTo(little);
            raised += more > nothing ? 1 : 0;
        }
        assertThat(raised).isGreaterThan(30);
    }

    @Test
    void aDearerPartNeverRaisesIt() {
        for (long seed = 1; seed <= 200; seed++) {
            Random random = new Random(seed);
            Knowledge known = Knowledge.none(chances(network(random), Evidence.none()));
            List<Choice> choices = choices(random);
            long before = Long.MAX_VALUE;
            for (long dearer = 0; dearer <= 5_000; dearer += 1_000) {
                List<Choice> now = new ArrayList<>(choices);
                long[] proceeds = choices.get(0).proceeds().clone();
                for (int w = 0; w < proceeds.length; w++) {
                    proceeds[w] -= dearer;
                }
                now.set(0, new Choice("repair", proceeds));
                long after = ceiling(known, now);
                assertThat(after).as("seed %d", seed).isLessThanOrEqualTo(before);
                before = after;
            }
        }
    }

    private static long ceiling(Network network, Evidence evidence, List<Choice> choices) {
        return ceiling(Knowledge.none(chances(network, evidence)), choices);
    }

    private static long ceiling(Knowledge knowledge, List<Choice> choices) {
        return Lottery.deal(knowledge.states(choices)).ceiling().orElse(-1);
    }

    private static double[] chances(Network network, Evidence evidence) {
        Set<String> causes = new TreeSet<>();
        for (int c = 0; c < CAUSES; c++) {
            causes.add("cause" + c);
        }
        double[] chances = new double[1 << CAUSES];
        Solver.of(network, evidence, causes)
                .solve(evidence)
                .mostProbable(causes, chances.length)
                .forEach(c -> chances[number(c.yes())] = c.probability());
        return chances;
    }

    private static int number(Set<String> yes) {
        BitSet bits = new BitSet();
        yes.forEach(name -> bits.set(Integer.parseInt(name.substring("cause".length()))));
        return bits.isEmpty() ? 0 : (int) bits.toLongArray()[0];
    }

    private static Network network(Random random) {
        List<Variable> variables = new ArrayList<>();
        for (int c = 0; c < CAUSES; c++) {
            variables.add(new Variable("cause" + c, new NoisyOr(.02 + .4 * random.nextDouble(), List.of())));
        }
        for (int s = 0; s < SIGNS; s++) {
            List<Link> links = new ArrayList<>();
            for (int c = 0; c < CAUSES; c++) {
                if (random.nextBoolean()) {
                    links.add(new Link("cause" + c, .05 + .9 * random.nextDouble()));
                }
            }
            variables.add(new Variable("sign" + s, new NoisyOr(.01 + .1 * random.nextDouble(), links)));
        }
        return Network.of(variables);
    }

    /** Every fault makes every route bring less, or as much. */
    private static List<Choice> choices(Random random) {
        List<Choice> choices = new ArrayList<>();
        for (String route : List.of("repair", "sell", "break")) {
            long whole = 20_000 + random.nextInt(6_000);
            long[] less = random.longs(CAUSES, 0, 12_000).toArray();
            long[] proceeds = new long[1 << CAUSES];
            for (int w = 0; w < proceeds.length; w++) {
                proceeds[w] = whole;
                for (int c = 0; c < CAUSES; c++) {
                    proceeds[w] -= (w >> c & 1) == 1 ? less[c] : 0;
                }
            }
            choices.add(new Choice(route, proceeds));
        }
        return choices;
    }
}
