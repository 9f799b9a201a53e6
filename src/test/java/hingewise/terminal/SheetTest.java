package hingewise.terminal;

import static org.assertj.core.api.Assertions.assertThat;

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
                Files.readString(Path.of(SWAPPED))
                        .replaceFirst("\"title\": \"", "\"title\": \"</title><script>x & y"));
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
}
