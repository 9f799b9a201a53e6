package hingewise.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

class AssessTextTest {
    private static final Path GOLDEN = Path.of("src/test/resources/terminal");
    private static final String CASE = GOLDEN.resolve("case.json").toString();

    @Test
    void theWholeAnswerReadsAsWrittenDown() throws IOException {
        Ran ran = Ran.small("assess", CASE);
        assertThat(ran.err()).isEmpty();
        assertThat(ran.exit()).isZero();
        assertThat(ran.out()).isEqualTo(Files.readString(GOLDEN.resolve("assess.txt")));
    }

    @Test
    void theWholeAnswerReadsAsWrittenDownInAscii() throws IOException {
        Ran ran = Ran.small(new Look(false, false), "assess", CASE);
        assertThat(ran.out()).isEqualTo(Files.readString(GOLDEN.resolve("assess-ascii.txt")));
        assertThat(ran.out().chars()).allMatch(c -> c == '\n' || c >= ' ' && c < 0x7F);
    }

    @Test
    void aStopComesFirstAndLeavesNothingButQuestions() throws IOException {
        Ran ran = Ran.small("assess", "--family", "clamshell", "--seen", "back-bulges=yes", "crease-blobs=yes");
        assertThat(ran.out()).isEqualTo(Files.readString(GOLDEN.resolve("assess-stop.txt")));
    }

    @Test
    void everyCautionStandsInFull() throws IOException {
        for (String name : List.of("clamshell-buzzes-no-image", "clamshell-swollen-battery", "book-got-wet")) {
            String demo = "demo-cases/" + name + ".json";
            String running = Ran.shipped("assess", demo)
                    .out()
                    .replaceAll("(?m)^(!| )+", " ")
                    .replaceAll("\\s+", " ");
            JsonNode cautions = new ObjectMapper()
                    .readTree(Ran.shipped("assess", demo, "--json").out())
                    .get("cautions");
            assertThat(cautions).as(name).isNotEmpty();
            for (JsonNode caution : cautions) {
                assertThat(running)
                        .as(name + " " + caution.get("id"))
                        .contains(caution.get("text").asText());
            }
        }
    }

    @Test
    void eachCautionIsToldOnceAndCalledUpByItsNumber() throws IOException {
        String demo = "demo-cases/clamshell-buzzes-no-image.json";
        String running =
                Ran.shipped("assess", demo).out().replaceAll("(?m)^(!| )+", " ").replaceAll("\\s+", " ");
        for (JsonNode caution : new ObjectMapper()
                .readTree(Ran.shipped("assess", demo, "--json").out())
                .get("cautions")) {
            String text = caution.get("text").asText();
            assertThat(running.split(java.util.regex.Pattern.quote(text), -1))
                    .as(text)
                    .hasSize(2);
        }
        assertThat(running).contains("care ! c1 ").containsPattern("care ! (and again )?c\\d+, c\\d+");
    }

    @Test
    void beforeBuyingItSaysWhoDoesWhatAndWhatCostsAreAgainst() {
        String listed = Ran.shipped("assess", GOLDEN.resolve("listing.json").toString(), "--explain")
                .out()
                .replaceAll("\\s+", " ");
        assertThat(listed)
                .contains(
                        "who ask the seller", "against the same phone with nothing wrong", "what is paid for it is not")
                .doesNotContain("open nothing");
        String here = Ran.shipped("assess", "demo-cases/clamshell-buzzes-no-image.json", "--explain")
                .out();
        assertThat(here).doesNotContain("who  ").doesNotContain("against the same phone");
    }

    @Test
    void aStepThatHangsOnAnAnswerBeginsWithTheQuestion() {
        String out = Ran.shipped("assess", "--family", "book", "--seen", "power-on=nothing")
                .out()
                .replaceAll("\\s+", " ");
        assertThat(out)
                .containsPattern("1\\. [^?]+ first Does a back bulge, or does the phone rock[^?]*\\? Only if no\\.");
    }

    @Test
    void aPhoneWithoutASignOfLifeHasNoFunctionsToTest() {
        String dead = Ran.shipped("assess", "--family", "book", "--seen", "power-on=nothing", "--explain")
                .out()
                .replaceAll("\\s+", " ");
        assertThat(dead)
                .contains("fit nothing and sell it as it is, its faults stated; its functions cannot be tested")
                .doesNotContain("test its functions");
        assertThat(Ran.shipped("assess", "--family", "book", "--seen", "power-on=image", "--explain")
                        .out()
                        .replaceAll("\\s+", " "))
                .contains("fit nothing, test its functions, then sell it");
    }

    @Test
    void noLineIsWiderThanEightyColumns() {
        for (Ran ran : new Ran[] {
            Ran.small("assess", CASE),
            Ran.shipped("assess", "demo-cases/clamshell-buzzes-no-image.json"),
            Ran.shipped("assess", "--family", "book", "--seen", "hot-to-touch=yes"),
            Ran.shipped("note", "demo-cases/clamshell-buzzes-no-image.json"),
            Ran.shipped("observations")
        }) {
            assertThat(ran.exit()).isZero();
            assertThat(ran.out().lines()).allMatch(l -> l.codePointCount(0, l.length()) <= 80);
        }
    }

    @Test
    void colourAddsNothingButColour() {
        Ran plain = Ran.small("assess", CASE, "--colour", "never");
        Ran coloured = Ran.small("assess", CASE, "--colour", "always");
        assertThat(coloured.out()).isNotEqualTo(plain.out()).contains("\u001B[");
        assertThat(coloured.out().replaceAll("\u001B\\[[0-9;]*m", "")).isEqualTo(plain.out());
    }

    @Test
    void colourIsUsedUnaskedOnlyOnATerminal() {
        assertThat(Ran.small(new Look(true, true), "assess", CASE).out()).contains("\u001B[");
        assertThat(Ran.small(new Look(false, true), "assess", CASE).out()).doesNotContain("\u001B");
    }

    @Test
    void aCaseCannotSteerTheTerminal() {
        String hostile = GOLDEN.resolve("hostile.json").toString();
        for (String command : new String[] {"assess", "note"}) {
            Ran ran = Ran.small(command, hostile);
            assertThat(ran.exit()).isZero();
            assertThat(ran.out().codePoints().filter(c -> c != '\n'))
                    .noneMatch(c -> Character.isISOControl(c) || Character.getType(c) == Character.FORMAT);
            assertThat(ran.out()).contains("Red \uFFFD[31m title");
        }
    }

    @Test
    void anEmptyCaseIsAnsweredWithBaseRates() {
        Ran ran = Ran.small("assess", "--family", "book");
        assertThat(ran.exit()).isZero();
        assertThat(ran.out()).contains("nothing recorded").contains("20 %").contains("no entry moves it much");
    }

    @Test
    void anotherRuleBookNeedsNoPriceBook() {
        Ran ran = Ran.run(
                Ran.PLAIN, "assess", "--rules", Ran.SMALL_RULES, "--family", "book", "--seen", "crease-blobs=yes");
        assertThat(ran.err()).isEmpty();
        assertThat(ran.exit()).isZero();
        assertThat(ran.out()).contains("inner display assembly").contains("bundled demo price book");
    }

    @Test
    void skippedAndContradictingEntriesAreNamed() {
        Ran ran = Ran.small(
                "assess",
                "--family",
                "clamshell",
                "--seen",
                "vibrates-no-image=yes@claim",
                "power-on=nothing",
                "back-loose=no@claim",
                "back-loose=yes");
        assertThat(ran.out())
                .contains("Left out of the reckoning")
                .contains("buzzes, no inner image (entry seen-1)")
                .contains("Told differently")
                .contains("back loose: no (claim, seller, 2026-11-20 10:00, seen-3), then yes (look, own")
                .contains("life\" is recorded as yes (entry seen-2)");
    }
}
