package hingewise.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SpellingTest {
    private final Spelling spelling =
            new Spelling(Set.of("cracked", "fingerprint", "battery", "hinge"), Set.of("crackers"));

    @ParameterizedTest
    @CsvSource({"craked,cracked", "crakced,cracked", "fingreprnit,fingerprint", "batery,battery"})
    void aNearWordIsMeant(String written, String meant) {
        assertThat(spelling.meant(written)).contains(meant);
    }

    @ParameterizedTest
    @CsvSource({"racked", "tracked", "crookd", "crackers", "hinnge", "finger"})
    void aWordThatIsShortFarOrSparedIsLeftAlone(String written) {
        assertThat(spelling.meant(written)).isEmpty();
    }

    // Worked by hand: the restricted distance of Damerau 1964 counts a swap once.
    @Test
    void aSwapIsOneChange() {
        assertThat(Spelling.changes("abcd", "abdc", 2)).isEqualTo(1);
        assertThat(Spelling.changes("abcd", "acbde", 2)).isEqualTo(2);
        assertThat(Spelling.changes("abcd", "wxyz", 2)).isEqualTo(3);
    }
}
