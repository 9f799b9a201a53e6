package hingewise.plain;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class QuotedTest {
    @Test
    void nothingQuotedCanSteerATerminal() {
        assertThat(Quoted.of("a\u001b[31mred\u0007\u0000\u009b2J")).isEqualTo("\"a\uFFFD[31mred\uFFFD\uFFFD\uFFFD2J\"");
    }

    @Test
    void aQuoteStaysOnItsLineAndReadsForward() {
        assertThat(Quoted.of("one\r\ntwo\u2028three\u202Efour")).isEqualTo("\"one  two three\uFFFDfour\"");
    }

    @Test
    void aLongTextIsCutBetweenCharacters() {
        assertThat(Quoted.of("\uD83D\uDCF1".repeat(61))).isEqualTo("\"" + "\uD83D\uDCF1".repeat(60) + "…\"");
    }

    @Test
    void halfACharacterIsMarked() {
        assertThat(Quoted.of("\uD83D!")).isEqualTo("\"\uFFFD!\"");
    }
}
