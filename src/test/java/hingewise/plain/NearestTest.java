package hingewise.plain;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class NearestTest {
    private static final List<String> KNOWN = List.of("hinge-spring", "hinge-springs", "cover-display", "sim");

    @Test
    void aSlipOfTheFingerFindsTheWord() {
        assertThat(Nearest.of("cover-dsiplay", KNOWN)).contains("cover-display");
        assertThat(Nearest.of("smi", KNOWN)).contains("sim");
    }

    @Test
    void theFewestChangesWinThenTheAlphabet() {
        assertThat(Nearest.of("hinge-sprin", KNOWN)).contains("hinge-spring");
        assertThat(Nearest.of("ab", List.of("ad", "ac"))).contains("ac");
    }

    @Test
    void aStrangeWordHasNoNeighbour() {
        assertThat(Nearest.of("battery", KNOWN)).isEmpty();
        assertThat(Nearest.of("", KNOWN)).isEmpty();
        assertThat(Nearest.of("x".repeat(1_000_000), KNOWN)).isEmpty();
    }

    @Test
    void adviceNamesTheNeighbourOrTheFewThatAreKnown() {
        assertThat(Nearest.advice("sin", KNOWN)).isEqualTo("; did you mean \"sim\"?");
        assertThat(Nearest.advice("battery", List.of("b", "a"))).isEqualTo("; known are a, b");
        assertThat(Nearest.advice("battery", List.of())).isEmpty();
    }
}
