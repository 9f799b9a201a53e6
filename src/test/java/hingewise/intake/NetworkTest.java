package hingewise.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hingewise.intake.Training.Lesson;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class NetworkTest {
    private static final int[] MADE = {0};
    private static final int[] NOT_MADE = {};

    /** One unit opens at 1 + 2/sqrt(2), the other stays shut; worked by hand. */
    @Test
    void unitsThatComeOutBelowNoughtSayNothing() {
        Network network = new Network(
                Rows.rounded(new float[][] {{1, -1}, {1, -1}}),
                new float[] {1, 1},
                Rows.rounded(new float[][] {{3}, {5}}),
                new float[] {-2});
        assertThat(network.odds(new int[] {0, 1})[0]).isCloseTo((float) (3 * (1 + Math.sqrt(2)) - 2), within(1e-5f));
        assertThat(network.odds(new int[0])[0]).isCloseTo(3 + 5 - 2, within(1e-5f));
    }

    /**
     * The claim is made by either word but not by both ("not" and "dark", say): no sum over single words can tell, which is
     * why there are hidden units (Minsky & Papert 1969, from memory).
     */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void wordsMayMeanTheOppositeTogether(long seed) {
        List<Lesson> lessons = new ArrayList<>();
        for (int i = 0; i < 20; i++) {
            lessons.add(new Lesson(new int[] {0}, MADE));
            lessons.add(new Lesson(new int[] {1}, MADE));
            lessons.add(new Lesson(new int[] {0, 1}, NOT_MADE));
            lessons.add(new Lesson(new int[] {}, NOT_MADE));
        }
        Network network = Training.taught(lessons, 2, 1, seed);
        assertThat(network.odds(new int[] {0})[0]).as("seed %d", seed).isPositive();
        assertThat(network.odds(new int[] {1})[0]).as("seed %d", seed).isPositive();
        assertThat(network.odds(new int[] {0, 1})[0]).as("seed %d", seed).isNegative();
        assertThat(network.odds(new int[] {})[0]).as("seed %d", seed).isNegative();
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void aNumberIsRoundedByHalfAStepAtMost(long seed) {
        float[][] numbers = random(seed);
        Rows rows = Rows.rounded(numbers);
        for (int r = 0; r < numbers.length; r++) {
            for (int i = 0; i < numbers[r].length; i++) {
                assertThat(rows.numbers()[r][i])
                        .as("seed %d", seed)
                        .isCloseTo(numbers[r][i], within(rows.steps()[r] * .501f));
            }
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void whatIsPackedIsWhatWasLearned(long seed) throws IOException {
        Rows rows = Rows.rounded(random(seed));
        Packer packer = new Packer();
        rows.pack(packer);
        assertThat(Rows.unpacked(new Unpacker(packer.packed())).numbers())
                .as("seed %d", seed)
                .isDeepEqualTo(rows.numbers());
    }

    private static float[][] random(long seed) {
        Random random = new Random(seed);
        float[][] numbers = new float[20][30];
        for (float[] row : numbers) {
            float spread = random.nextFloat() * 10;
            for (int i = 0; i < row.length; i++) {
                row[i] = (float) random.nextGaussian() * spread;
            }
        }
        numbers[7] = new float[30];
        return numbers;
    }
}
