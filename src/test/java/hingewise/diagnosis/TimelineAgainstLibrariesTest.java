package hingewise.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hingewise.inference.Network;
import hingewise.oracle.Answer;
import hingewise.oracle.GraphmodOracle;
import hingewise.oracle.WekaOracle;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The network of a timeline, recomputed by two general-purpose libraries (Weka 3.8.6, graphmod 0.1.0). */
class TimelineAgainstLibrariesTest {
    @Test
    void twoIndependentLibrariesAgreeOnRandomTimelines() {
        for (long seed = 1001; seed <= 1020; seed++) {
            Random random = new Random(seed);
            Diagnosis diagnosis = new Diagnostician(RandomTimelines.rules(random))
                    .diagnose(RandomTimelines.story(random).told());
            Network solved = diagnosis.solver().expanded();
            Answer weka = WekaOracle.solve(solved, diagnosis.evidence());
            List<String> causes = diagnosis.causes().stream()
                    .map(c -> Names.cause(c.cause().id()))
                    .toList();

            agrees(seed, diagnosis.solution().probabilities(), weka.probabilities());
            assertThat(diagnosis.solution().logEvidence())
                    .as("seed %d, log of P(evidence)", seed)
                    .isCloseTo(weka.logEvidence(), within(1e-9));
            agrees(seed, GraphmodOracle.solve(solved, diagnosis.evidence(), causes), weka.probabilities());
        }
    }

    private static void agrees(long seed, Map<String, Double> ours, Map<String, Double> theirs) {
        ours.forEach((name, probability) ->
                assertThat(probability).as("seed %d, %s", seed, name).isCloseTo(theirs.get(name), within(1e-9)));
    }
}
