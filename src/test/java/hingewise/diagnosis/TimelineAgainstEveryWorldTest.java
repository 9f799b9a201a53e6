package hingewise.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hingewise.rulebook.RuleBook;
import hingewise.rulebook.Rules;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

class TimelineAgainstEveryWorldTest {
    @Test
    void randomTimelinesAgreeWithWalkingThroughEveryWorld() {
        for (long seed = 1; seed <= 40; seed++) {
            Random random = new Random(seed);
            RuleBook rules = RandomTimelines.rules(random);
            Diagnosis diagnosis = new Diagnostician(rules)
                    .diagnose(RandomTimelines.story(random).told());
            Map<String, Double> expected =
                    EveryWorld.chances(rules, Rules.FAMILY, diagnosis.readings().happenings());
            for (String cause : RandomTimelines.CAUSES) {
                assertThat(diagnosis.chanceOf(cause))
                        .as("seed %d, cause %s", seed, cause)
                        .isCloseTo(expected.get(cause), within(1e-9));
            }
        }
    }

    @Test
    void theReasonsOfEveryCauseSumToTheWholeChange() {
        for (long seed = 1; seed <= 60; seed++) {
            Random random = new Random(seed);
            Diagnosis diagnosis = new Diagnostician(RandomTimelines.rules(random))
                    .diagnose(RandomTimelines.story(random).told());
            for (RankedCause cause : diagnosis.causes()) {
                double sum =
                        cause.reasons().stream().mapToDouble(Reason::weight).sum();
                assertThat(sum)
                        .as("seed %d, cause %s", seed, cause.cause().id())
                        .isCloseTo(logit(cause.probability()) - logit(cause.prior()), within(1e-9));
            }
        }
    }

    private static double logit(double p) {
        return Math.log(p) - Math.log1p(-p);
    }
}
