package hingewise.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class NearestIdTest {
    private static final List<String> KNOWN = List.of("hinge-spring", "hinge-springs", "cover-display", "sim");

    @Test
    void aSlipOfTheFingerFindsTheWord() {
        assertThat(NearestId.of("cover-dsiplay", KNOWN)).contains("cover-display");
        assertThat(NearestId.of("smi", KNOWN)).contains("sim");
    }

    @Test
    void theFewestChangesWinThenTheAlphabet() {
        assertThat(NearestId.of("hinge-sprin", KNOWN)).contains("hinge-spring");
        assertThat(NearestId.of("ab", List.of("ad", "ac"))).contains("ac");
    }

    @Test
    void aStrangeWordHasNoNeighbour() {
        assertThat(NearestId.of("battery", KNOWN)).isEmpty();
        assertThat(NearestId.of("", KNOWN)).isEmpty();
        assertThat(NearestId.of("x".repeat(1_000_000), KNOWN)).isEmpty();
    }

    @Test
    void adviceNamesTheNeighbourOrTheFewThatAreKnown() {
        assertThat(NearestId.advice("sin", KNOWN)).isEqualTo("Did you mean \"sim\"?");
        assertThat(NearestId.advice("battery", List.of("b", "a"))).isEqualTo("Known are: b, a.");
        assertThat(NearestId.advice(
                        "battery", IntStream.range(0, 20).mapToObj(i -> "x" + i).toList()))
                .isEqualTo("Nothing known is close to it.");
    }

    @Test
    void adviceNamesWhatHoldsTheWord() {
        List<String> known = IntStream.range(0, 14)
                .mapToObj(i -> "reseat-plug-" + (char) ('a' + i))
                .toList();
        assertThat(NearestId.advice("reseat", known))
                .startsWith("Known with it are: reseat-plug-a, reseat-plug-b, ")
                .endsWith(", reseat-plug-l and 2 more.");
        assertThat(NearestId.advice("springs", KNOWN)).isEqualTo("Known with it are: hinge-springs.");
        assertThat(NearestId.advice("cover-displays-of-glass", KNOWN)).startsWith("Known are: ");
    }
}
