package hingewise.intake;

import static org.assertj.core.api.Assertions.assertThat;

import hingewise.intake.store.Readers;
import hingewise.rulebook.RuleBook;
import hingewise.rulebook.yaml.RuleBookReader;
import hingewise.rulebook.yaml.RuleFiles;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What becomes of a sentence: one small one for each way of speaking. Expectations are common sense, no source. */
class ListingReaderTest {
    private static final RuleBook RULES =
            RuleBookReader.readShipped().ruleBook().orElseThrow();

    private static final ListingReader READER = Readers.of(RuleFiles.SHIPPED, RULES, () -> {});

    private Set<String> read(String text) {
        Set<String> read = new TreeSet<>();
        READER.read(text).suggestions().forEach(s -> read.add(s.observation() + (s.yes() ? "=yes" : "=no")));
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
                // each of what "and" joins, and a part of a part
                "Inner screen and touch work.|vibrates-no-image=no",
                "Inner screen and touch work.|dead-touch-whole=no",
                "The outer screen and its touch are dead.|cover-touch-dead=yes",
                "Outer screen: touch dead|cover-touch-dead=yes",
                "The picture and the touch are fine.|dead-touch-whole=no",
                // taken up by "too", "not", "does", within a sentence and across a full stop
                "The outer glass is cracked, the back too.|back-cracked=yes",
                "Display innen hat einen Riss, hinten nicht.|back-cracked=no",
                "The outer screen works. The inner one does not.|vibrates-no-image=yes",
                // how far "no" reaches
                "No dents and scratches at the corners.|corner-dents=no",
                "Neither screen is cracked.|cover-cracked=no",
                "touch not working back glass cracked|back-cracked=yes",
                "Boots without detours to the home screen.|logo-loops=no",
                "Das Innendisplay reagiert rechts nicht mehr, die Rückseite sitzt nicht mehr fest.|back-loose=yes",
                // a list whose place stands behind it, and one that a heading announces
                "Touch: ok|dead-touch-whole=no",
                "speaker - fine|loudspeaker-silent=no",
                "Earpiece loud. Mic: works|not-heard-in-calls=no",
                "opens: fully|does-not-open-flat=no",
                "Q. Do both screens come on? A. They do.|vibrates-no-image=no",
                "Inner screen has a black blob in the top corner.|blobs-off-fold=yes",
                // what was, is not silenced by what it has been so since
                "The speaker has been silent since I replaced the battery.|loudspeaker-silent=yes",
                "The speaker has been silent since I replaced the battery.|new-fault-after-closing=yes",
                "I opened it once. Since then the inner screen stays dark.|new-fault-after-closing=yes",
                // answers
                "Do both screens come on? They do.|dead-cover-screen=no",
                "Has it been apart? Not by me and not by anyone I know.|was-opened=no",
                "It only starts if it is plugged in.|starts-only-on-cable=yes",
                "It fell out of my pocket onto the tiles.|was-dropped=yes",
                "It fell into the lake.|was-wet=yes",
                "Charges by cable only.|charges-only-by-cable=yes",
                // a heading, and an afterthought
                "The hinge. Stiff and creaky.|hinge-noise=yes",
                "The hinge feels smooth. No creaking.|hinge-noise=no",
                // small words between those of a phrase, and all forms of "not"
                "The outer screen will not really light up.|dead-cover-screen=yes",
                "Das Handy ist mir aus der Hand gerutscht.|was-dropped=yes",
                "Außendisplay reagiert nicht auf Berührung.|cover-touch-dead=yes",
                "Das Innendisplay hat keinen Riss und ist nie runtergefallen.|was-dropped=no",
            })
    void whatIsSaidIsSuggested(String text, String claim) {
        assertThat(read(text)).contains(claim);
    }

    @Test
    void whatAnotherAnswerSaysAlreadyIsLeftUnsaid() {
        assertThat(read("Completely dead, no sound, no vibration.")).containsExactly("no-sign-of-life=yes");
    }

    /** "Register" is what a phone does with a network, too. */
    @Test
    void aWordIsNotTakenForItsDouble() {
        assertThat(read("IMEI checked on the register last night.")).doesNotContain("no-service=no", "no-service=yes");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "It should charge once a new battery is in.",
                "If you swap the battery, it turns on again.",
                "A friend has the same model, and his outer screen is dead.",
                "I also have a second one with a cracked back, see my other ads.",
                "A new inner screen costs 300.",
                "You must not peel off the film.",
                "Perfect parking, no time wasters.",
                "Die Rückseite müsste getauscht werden.",
                "Ich weiß nicht, ob es mal runtergefallen ist.",
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

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "It fell into the lake.|was-dropped",
                "I can hear it vibrate.|earpiece-silent",
                "Camera not tested because the display is black.|rear-camera-black",
                "The speaker buzzes like a fly.|no-vibration",
                "No logo loop.|no-logo-inside",
                "The power key has no click left in it.|hinge-noise",
                "The charging cable is broken.|charges-not-at-all",
                "The other phone has a cracked back. This one has no box.|back-cracked",
                "Voice notes sound as if under water.|was-wet",
            })
    void whatOnlySoundsLikeItIsNotSuggested(String text, String observation) {
        assertThat(READER.read(text).suggestions())
                .noneMatch(s -> s.observation().equals(observation));
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
        return READER.read(text).suggestions().get(0).certainty();
    }

    @Test
    void aQuoteStandsInTheTextWhereItIsSaidToStand() {
        String text = "Hello \uD83D\uDE00, the inner screen is cracked\u2026 and the back isn’t cracked.";
        assertThat(READER.read(text).suggestions())
                .isNotEmpty()
                .allSatisfy(s -> assertThat(text.substring(s.start(), s.end())).isEqualTo(s.quote()));
    }

    /** No phrase need be met: of all stretches the likeliest is quoted. */
    @Test
    void theWordsThatTellAreQuoted() {
        assertThat(READER.read("Scharnier knarzt beim Aufmachen, hält aber jeden Winkel.")
                        .suggestions())
                .filteredOn(s -> s.observation().equals("will-not-hold-angle"))
                .singleElement()
                .satisfies(s -> assertThat(s.quote()).contains("hält", "Winkel"));
    }

    @Test
    void whatFollowsFromTwoStatementsIsSuggestedOnlyWithBoth() {
        assertThat(read("The inner screen stays black.")).doesNotContain("vibrates-no-image=yes");
        assertThat(read("The inner screen stays black. It rings when called."))
                .contains("vibrates-no-image=yes", "no-sign-of-life=no");
    }

    @Test
    void theLanguageIsRecognised() {
        assertThat(READER.read("Das Display ist gesprungen und es lädt nicht.").language())
                .isEqualTo("de");
        assertThat(READER.read("The screen is cracked and it does not charge.").language())
                .isEqualTo("en");
        assertThat(READER.read("outer screen dead").language()).isEqualTo("en");
        assertThat(READER.read("Akku schwach").language()).isEqualTo("de");
    }

    @Test
    void anyTextIsReadWithoutHarm() {
        for (String text :
                new String[] {"", " ", "\0\u001b[31m", "?", "...", "\n\n", "no", "a".repeat(5000), "no ".repeat(3000)
                }) {
            assertThat(READER.read(text).suggestions()).isEmpty();
        }
    }
}
