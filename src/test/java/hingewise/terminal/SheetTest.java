package hingewise.terminal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SheetTest {
    private static final Path GOLDEN = Path.of("src/test/resources/terminal");
    private static final String SWAPPED = "demo-cases/clamshell-reseat-fails-then-swap.json";
    private static final String SWOLLEN = "demo-cases/clamshell-swollen-battery.json";

    @TempDir
    Path place;

    @Test
    void theWholeSheetReadsAsWrittenDown() throws IOException {
        Ran ran = Ran.shipped("sheet", SWAPPED);
        assertThat(ran.err()).isEmpty();
        assertThat(ran.exit()).isZero();
        assertThat(ran.out()).isEqualTo(Files.readString(GOLDEN.resolve("sheet.txt")));
    }

    @Test
    void anyTerminalCanShowIt() {
        Ran ran = Ran.run(new Look(false, false), "sheet", SWAPPED);
        assertThat(ran.out().chars()).allMatch(c -> c == '\n' || c >= ' ' && c < 0x7F);
        assertThat(ran.out()).doesNotContain("?- ").contains("+- ", "`- ", " > stop, end A");
        assertThat(ran.out().lines()).allMatch(l -> l.length() <= Page.WIDTH);
    }

    @Test
    void whereABulgingBackIsAskedForItSaysThatWorkStopsThen() throws IOException {
        Path dead = Files.writeString(place.resolve("dead.json"), """
                {"format": "hingewise-case", "version": 1, "title": "Dead", "invented": true,
                 "phone": {"family": "book", "label": ""},
                 "entries": [{"id": "e1", "at": "2026-11-20T10:00:00Z", "by": "bench", "kind": "look",
                              "about": "power-on", "answer": "nothing"}]}
                """);
        String sheet = Ran.shipped("sheet", dead.toString()).out().replaceAll("\\s+", " ");
        assertThat(sheet)
                .contains("1 Rule out swelling first – begin here", "all work stops: record it, ask again")
                .doesNotContain("a first answer is another →");
    }

    @Test
    void anEndSaysHowAPhoneIsSoldByWhatWasSeenOnTheWay() throws IOException {
        Path dead = Files.writeString(place.resolve("dead.json"), """
                {"format": "hingewise-case", "version": 1, "title": "Dead", "invented": true,
                 "phone": {"family": "book", "label": ""},
                 "entries": [{"id": "e1", "at": "2026-11-20T10:00:00Z", "by": "bench", "kind": "look",
                              "about": "power-on", "answer": "nothing"}]}
                """);
        String sheet = Ran.shipped("sheet", dead.toString()).out().replaceAll("\\s+", " ");
        // It wakes on a charger, or it does not.
        assertThat(sheet)
                .contains(
                        "to decide now (fit nothing and sell it as it is, its faults stated",
                        ": fit nothing, test its functions, then sell it");
    }

    @Test
    void theJsonTellsWhichAnswerStopsAllWork() throws IOException {
        Path dead = Files.writeString(place.resolve("dead.json"), """
                {"format": "hingewise-case", "version": 1, "title": "Dead", "invented": true,
                 "phone": {"family": "book", "label": ""},
                 "entries": [{"id": "e1", "at": "2026-11-20T10:00:00Z", "by": "bench", "kind": "look",
                              "about": "power-on", "answer": "nothing"}]}
                """);
        JsonNode sheet = new ObjectMapper()
                .readTree(Ran.shipped("sheet", dead.toString(), "--json").out());
        JsonNode look = sheet.at("/stations/0");
        assertThat(look.at("/branches/0/stopsWork").asBoolean(true)).isFalse();
        assertThat(look.at("/branches/1/stopsWork").asBoolean()).isTrue();
        assertThat(sheet.at("/stations/1/askFirst")).isNotEmpty().allMatch(n -> n.has("otherAnswerStopsWork"));
    }

    @Test
    void aPriceOnTheSheetIsTheLeastOfSeveral() {
        assertThat(Ran.shipped("sheet", SWAPPED).out().replaceAll("\\s+", " "))
                .contains("adhesive for both backs (back-adhesive-set) from 2.90 EUR");
    }

    @Test
    void beforeBuyingTheSheetSaysWhoDoesWhatAndWhatCostsAreAgainst() {
        assertThat(Ran.shipped("sheet", GOLDEN.resolve("listing.json").toString())
                        .out()
                        .replaceAll("\\s+", " "))
                .contains("who ask the seller", "against the same phone with nothing wrong");
    }

    @Test
    void whileWorkStopsTheSheetSaysSoAndWhyAndNothingToDo() {
        Ran ran = Ran.shipped("sheet", SWOLLEN);
        assertThat(ran.exit()).isZero();
        assertThat(ran.out())
                .contains("!! STOP: work on this phone stops here.", "!! Stop. A swollen")
                .doesNotContain("Stations", "Where to stop", "What to have ready");
    }

    @Test
    void aCaseThatCannotBeReadIsRefusedInASentence() throws IOException {
        Ran missing = Ran.shipped("sheet", place.resolve("none.json").toString());
        assertThat(missing.exit()).isEqualTo(2);
        assertThat(missing.out()).isEmpty();
        assertThat(missing.err()).contains("none.json").doesNotContain("Exception", "\tat ");
        Path strange = Files.writeString(
                place.resolve("strange.json"),
                Files.readString(GOLDEN.resolve("case.json")).replace("\"crease-blobs\"", "\"crease-blob\""));
        Path html = place.resolve("sheet.html");
        Ran unknown = Ran.shipped("sheet", strange.toString(), "--html", html.toString());
        assertThat(unknown.exit()).isEqualTo(2);
        assertThat(unknown.err()).contains("Did you mean \"crease-blobs\"?");
        assertThat(html).doesNotExist();
    }

    @Test
    void nothingInACaseSteersATerminal() {
        Ran ran = Ran.small("sheet", GOLDEN.resolve("hostile.json").toString(), "--colour", "never");
        assertThat(ran.exit()).isZero();
        assertThat(ran.out().chars()).noneMatch(c -> c < ' ' && c != '\n' || c >= 0x7F && c < 0xA0 || c == 0x202E);
    }

    @Test
    void theHtmlIsOnePageThatNeedsNothingElseAndHoldsNoMarkupOfTheCase() throws IOException {
        Path hostile = Files.writeString(
                place.resolve("hostile.json"),
                Files.readString(Path.of(SWAPPED)).replaceFirst("\"title\": \"", "\"title\": \"</title><script>x & y"));
        Path html = place.resolve("sheet.html");
        Ran ran = Ran.shipped("sheet", hostile.toString(), "--html", html.toString());
        assertThat(ran.err()).isEmpty();
        assertThat(ran.out()).isEqualTo(html + "\n");
        assertThat(Files.readString(html))
                .contains("&lt;/title&gt;&lt;script&gt;x &amp; y", "id=\"station-1\"", "href=\"#end-A\"", "@page")
                .doesNotContain("<script", "src=", "<link", "@import", "url(");
        try (Stream<Path> files = Files.list(place)) {
            assertThat(files).containsExactlyInAnyOrder(hostile, html);
        }
    }

    @Test
    void theCaseFileIsNeverReplacedByItsSheet() throws IOException {
        Path own = Files.copy(Path.of(SWAPPED), place.resolve("case.json"));
        Ran ran = Ran.shipped("sheet", own.toString(), "--html", own.toString());
        assertThat(ran.exit()).isEqualTo(2);
        assertThat(ran.err()).contains("is the case file itself");
        assertThat(own).hasSameTextualContentAs(Path.of(SWAPPED));
    }

    @Test
    void theJsonSaysWhatThePageSays() throws IOException {
        Ran ran = Ran.shipped("sheet", SWAPPED, "--json");
        assertThat(ran.err()).isEmpty();
        assertThat(ran.exit()).isZero();
        JsonNode sheet = new ObjectMapper().readTree(ran.out());
        String page = Ran.shipped("sheet", SWAPPED).out().replaceAll("\\s+", " ");
        assertThat(sheet.at("/stations")).isNotEmpty();
        for (JsonNode station : sheet.at("/stations")) {
            assertThat(page)
                    .contains(station.at("/number").asText() + " "
                            + station.at("/label").asText());
            station.at("/cautions")
                    .forEach(
                            c -> assertThat(page).contains("c" + c.at("/number").asText() + " "));
            double sum = 0;
            for (JsonNode branch : station.at("/branches")) {
                sum += branch.at("/chance").asDouble();
                assertThat(branch.has("station") || branch.has("end") || branch.has("askAgain"))
                        .isTrue();
            }
            assertThat(sum).isCloseTo(station.at("/chance").asDouble(), within(1e-9));
        }
        sheet.at("/tools").forEach(t -> assertThat(page).contains(t.at("/label").asText()));
        assertThat(sheet.at("/tools")).isNotEmpty();
        assertThat(sheet.at("/ends")).isNotEmpty();
        assertThat(page).contains(sheet.at("/expected").asText() + " EUR on average");
    }

    @Test
    void theJsonOfAStoppedCaseHasQuestionsOnly() throws IOException {
        JsonNode sheet = new ObjectMapper()
                .readTree(Ran.shipped("sheet", SWOLLEN, "--json").out());
        assertThat(sheet.at("/stopped").asBoolean()).isTrue();
        assertThat(sheet.at("/cautions/0/stops").asBoolean()).isTrue();
        assertThat(sheet.has("questions")).isTrue();
        assertThat(sheet.has("stations")).isFalse();
    }

    @Test
    void aPageAndJsonAtOnceAreRefusedAndNothingIsWritten() {
        Path html = place.resolve("sheet.html");
        Ran ran = Ran.shipped("sheet", SWAPPED, "--json", "--html", html.toString());
        assertThat(ran.exit()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).contains("leave it out or leave --json out");
        assertThat(html).doesNotExist();
    }

    @Test
    void theSheetOfAListingSpeaksOfAnOffer() throws IOException {
        Path listing = Files.copy(GOLDEN.resolve("listing.json"), place.resolve("listing.json"));
        String sheet = Ran.shipped("sheet", listing.toString()).out().replaceAll("\\s+", " ");
        assertThat(sheet).contains("offer or pass").doesNotContain("decide now", "Decide now", "deciding now", "tools");
        String answer =
                Ran.shipped("assess", listing.toString(), "--explain").out().replaceAll("\\s+", " ");
        assertThat(answer).contains("offering or passing now", "Offering or passing now is expected to cost");
        assertThat(answer).doesNotContain("deciding now", "Deciding now");
    }
}
