package hingewise.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class PageTest {
    private static final Look PLAIN = new Look(false, true);

    @Test
    void wordsWrapBelowTheFirstWord() {
        assertThat(new Page(PLAIN).hanging(2, "for  ", "word ".repeat(16)).toString())
                .isEqualTo("  for  " + "word ".repeat(13) + "word\n       word word\n");
    }

    @Test
    void aWordTooLongIsCut() {
        assertThat(new Page(PLAIN).line("x".repeat(100)).toString())
                .isEqualTo("x".repeat(80) + "\n" + "x".repeat(20) + "\n");
    }

    @Test
    void aFigureStaysWithItsPerCentSign() {
        String text = new Page(PLAIN).line("x".repeat(78) + " 5 %").toString();
        assertThat(text).isEqualTo("x".repeat(78) + "\n5 %\n");
    }

    @Test
    void charactersBeyondTheFirstPlaneCountOnce() {
        String phones = "\uD83D\uDCF1".repeat(80);
        assertThat(new Page(PLAIN).line(phones).toString()).isEqualTo(phones + "\n");
    }

    @Test
    void withoutUnicodeEveryCharacterHasAStandIn() {
        assertThat(new Page(new Look(false, false)).line("“Größe” – 5 € · ½ ✓").toString())
                .isEqualTo("\"Grosse\" - 5 EUR * 1?2 ?\n");
    }

    @Test
    void barsAndFiguresNeverSayCertainWhenItIsNot() {
        assertThat(Figures.percent(.9996)).isEqualTo(">99.9 %");
        assertThat(Figures.percent(.0004)).isEqualTo("<0.1 %");
        assertThat(Figures.percent(.995)).isEqualTo("99.5 %");
        assertThat(Figures.percent(.5)).isEqualTo("50 %");
        assertThat(Figures.percent(0)).isEqualTo("<0.1 %");
        assertThat(Figures.percent(1)).isEqualTo(">99.9 %");
        assertThat(Figures.bar(.001, PLAIN)).isEqualTo("╸┄┄┄┄┄┄┄┄┄");
        assertThat(Figures.bar(.75, PLAIN)).isEqualTo("━━━━━━━╸┄┄");
        assertThat(Figures.bar(1, PLAIN)).isEqualTo("━━━━━━━━━━");
        assertThat(Figures.bar(.5, new Look(false, false))).isEqualTo("=====.....");
    }
}
