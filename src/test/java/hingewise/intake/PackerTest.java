package hingewise.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PackerTest {
    private static final List<String> NAMES = List.of("", "knarzt nicht", "ʘ grün", "\uD83D\uDCE6\n=");

    private static int[] bits(float[] numbers) {
        return IntStream.range(0, numbers.length)
                .map(i -> Float.floatToRawIntBits(numbers[i]))
                .toArray();
    }

    private static float[] unpacked(float[] numbers) throws IOException {
        Packer packer = new Packer();
        packer.numbers(numbers);
        return new Unpacker(packer.packed()).numbers();
    }

    @Test
    void numbersKeepEveryBit() throws IOException {
        float[] odd = {0, -0f, Float.NaN, Float.intBitsToFloat(0x7fc00001), Float.MIN_VALUE, -1 / 3f, 0, 0};
        assertThat(bits(unpacked(odd))).containsExactly(bits(odd));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void numbersMostlyNoughtComeOutAsTheyWentIn(long seed) throws IOException {
        Random random = new Random(seed);
        float[] numbers = new float[random.nextInt(1000)];
        IntStream.range(0, numbers.length)
                .filter(i -> random.nextInt(4) == 0)
                .forEach(i -> numbers[i] = Float.intBitsToFloat(random.nextInt()));
        assertThat(bits(unpacked(numbers))).as("seed %d", seed).containsExactly(bits(numbers));
    }

    @Test
    void whatIsPackedTogetherComesOutInOrder() throws IOException {
        Packer packer = new Packer();
        packer.numbers(new float[] {1, 2});
        packer.names(NAMES);
        packer.numbers(new float[0]);
        packer.names(List.of());
        packer.numbers(new float[] {0, 3});
        Unpacker in = new Unpacker(packer.packed());
        assertThat(in.numbers()).containsExactly(1, 2);
        assertThat(in.names()).isEqualTo(NAMES);
        assertThat(in.numbers()).isEmpty();
        assertThat(in.names()).isEmpty();
        assertThat(in.numbers()).containsExactly(0, 3);
    }
}
