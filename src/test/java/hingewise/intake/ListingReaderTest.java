package hingewise.intake;

import static org.assertj.core.api.Assertions.assertThat;

import hingewise.rulebook.RuleBook;
import hingewise.rulebook.yaml.RuleBookReader;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What becomes of a sentence: one small one for each way of speaking. Expectations are common sense, no source. */
class ListingReaderTest {
    private static final RuleBook RULES =
            RuleBookReader.readShipped().ruleBook().orElseThrow();

    private final ListingReader reader = new ListingReader(RULES);

    private Set<String> read(String text) {
        Set<String> read = new TreeSet<>();
        reader.read(text).suggestions().forEach(s -> read.add(s.observation() + (s.yes() ? "=yes" : "=no")));
        return read;
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "The inner screen is cracked.|inner-crack-visible=yes",
                "There is not a single crack in the inner screen.|inner-crack-visible=no",
                "No cracks, lines or dots on the inner screen.|coloured-line=no",
                "A green line on the inner screen, the back is not cracked.|back-cracked=no",
                "Inner screen: cracked|inner-crack-visible=yes",
                "Cracks in the inner screen: none|inner-crack-visible=no",
                "Has it been opened? No.|was-opened=no",
                "The camera, the speaker and the microphone all work.|not-heard-in-calls=no",
                "Everything works except the fingerprint sensor.|fingerprint-dead=yes",
                "Charges on the pad but not by cable.|charges-only-wirelessly=yes",
                "The inner scren is crakced.|inner-crack-visible=yes",
                "Das Innendisplay hat einen Riss.|inner-crack-visible=yes",
                "Das Innendisplay hat keinen Riss und ist nie runtergefallen.|was-dropped=no",
            })
    void whatIsSaidIsSuggested(String text, String claim) {
        assertThat(read(text)).contains(claim);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "It should charge once a new battery is in.",
                "Does it charge?",
                "Everything else works.",
                "I have not tested the camera.",
                "WANTED: phone with cracked inner screen.",
                "Oh wonderful, the inner screen is cracked, modern art.",
                "My old phone had a cracked back.",
                "Suche ein Gerät mit gebrochenem Innendisplay.",
                "Die Kamera konnte ich nicht testen.",
            })
    void whatIsNotSaidOfThisPhoneNowIsLeftAlone(String text) {
        assertThat(read(text)).isEmpty();
    }

    @Test
    void aTextThatSaysBothSuggestsNeither() {
        assertThat(read("The back is cracked. The back is not cracked.")).isEmpty();
    }

    @Test
    void hedgesAndHearsayAreLessCertain() {
        double plain = certainty("It was dropped.");
        assertThat(certainty("I think it was dropped.")).isLessThan(plain);
        assertThat(certainty("The previous owner said it was dropped.")).isLessThan(plain);
        assertThat(plain).isEqualTo(Suggestion.PLAIN);
    }

    private double certainty(String text) {
        return reader.read(text).suggestions().get(0).certainty();
    }

    @Test
    void aQuoteStandsInTheTextWhereItIsSaidToStand() {
        String text = "Hello \uD83D\uDE00, the inner screen is cracked\u2026 and the back isn’t cracked.";
        assertThat(reader.read(text).suggestions())
                .isNotEmpty()
                .allSatisfy(s -> assertThat(text.substring(s.start(), s.end())).isEqualTo(s.quote()));
    }

    @Test
    void whatFollowsFromTwoStatementsIsSuggestedOnlyWithBoth() {
        assertThat(read("The inner screen stays black.")).doesNotContain("vibrates-no-image=yes");
        assertThat(read("The inner screen stays black. It rings when called."))
                .contains("vibrates-no-image=yes", "no-sign-of-life=no");
    }

    @Test
    void theLanguageIsRecognised() {
        assertThat(reader.read("Das Display ist gesprungen und es lädt nicht.").language())
                .isEqualTo("de");
        assertThat(reader.read("The screen is cracked and it does not charge.").language())
                .isEqualTo("en");
    }

    @Test
    void anyTextIsReadWithoutHarm() {
        for (String text :
                new String[] {"", " ", "\0\u001b[31m", "?", "...", "\n\n", "no", "a".repeat(5000), "no ".repeat(3000)
                }) {
            assertThat(reader.read(text).suggestions()).isEmpty();
        }
    }
}
