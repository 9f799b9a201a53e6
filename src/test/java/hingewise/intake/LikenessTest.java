package hingewise.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

class LikenessTest {
    private final Likeness likeness = new Likeness(Map.of(
            "hinge", List.of(Set.of("hinge", "creaks"), Set.of("hinge", "stiff")),
            "cable", List.of(Set.of("cable", "loose"))));

    @Test
    void aSentenceIsLikestToWhatSharesItsWords() {
        Map<String, Double> like = likeness.of(Set.of("the", "hinge", "creaks"));
        assertThat(like.get("hinge")).isGreaterThan(like.get("cable"));
    }

    /**
     * Worked by hand: of 6 words 4 are the hinge's, 2 of these "hinge", which are all there are. With seven words added,
     * (2 + 7 · 2/6) / (4 + 7) is 13/33, against 2/6 of all: the ratio is 13/11. The cable's is (7 · 2/6) / (2 + 7) against
     * 2/6: 7/9.
     */
    @Test
    void eachWordCountsByHowMuchOftenerItStandsThere() {
        Map<String, Double> like = likeness.of(Set.of("hinge"));
        assertThat(like.get("hinge")).isCloseTo(Math.log(13.0 / 11), within(1e-12));
        assertThat(like.get("cable")).isCloseTo(Math.log(7.0 / 9), within(1e-12));
    }

    @Test
    void wordsThatNoExampleHasTellNothing() {
        assertThat(likeness.of(Set.of("zebra")).values()).containsOnly(0.0);
    }
}
