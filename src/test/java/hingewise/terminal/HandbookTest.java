package hingewise.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class HandbookTest {
    @TempDir
    Path place;

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.map(p -> String.valueOf(p.getFileName())).sorted().toList();
        }
    }

    @Test
    void theHandbookIsWrittenAndItsFirstPageNamed() throws IOException {
        Path folder = place.resolve("new").resolve("handbook");
        Ran ran = Ran.small("handbook", folder.toString());
        assertThat(ran.exit()).isZero();
        assertThat(ran.out()).isEqualTo(folder.resolve("index.html") + "\n");
        assertThat(names(folder))
                .contains("index.html", "causes.html", "handbook.css")
                .hasSize(10);
        assertThat(names(place.resolve("new"))).containsExactly("handbook");
    }

    @Test
    void anEarlierHandbookIsReplaced() throws IOException {
        Path folder = Files.createDirectory(place.resolve("handbook"));
        Files.writeString(folder.resolve("causes.html"), "old");
        assertThat(Ran.small("handbook", folder.toString()).exit()).isZero();
        assertThat(folder.resolve("causes.html")).content().contains("Inner panel fractured at the fold");
        assertThat(names(place)).containsExactly("handbook");
    }

    @Test
    void aFolderWithAnythingElseIsLeftAsItIs() throws IOException {
        Path folder = Files.createDirectory(place.resolve("mine"));
        Files.writeString(folder.resolve("causes.html"), "old");
        Files.writeString(folder.resolve("letter.txt"), "dear");
        Ran ran = Ran.small("handbook", folder.toString());
        assertThat(ran.exit()).isEqualTo(2);
        assertThat(ran.err())
                .contains("holds " + folder.resolve("letter.txt") + ", which is no page of a handbook")
                .contains("name an empty folder or a new one");
        assertThat(folder.resolve("causes.html")).hasContent("old");
        assertThat(names(folder)).containsExactly("causes.html", "letter.txt");
        assertThat(names(place)).containsExactly("mine");
    }

    @Test
    void aFileInTheWayIsLeftAsItIs() throws IOException {
        Path file = Files.writeString(place.resolve("file"), "dear");
        Ran ran = Ran.small("handbook", file.toString());
        assertThat(ran.exit()).isEqualTo(2);
        assertThat(file).hasContent("dear");
        assertThat(names(place)).containsExactly("file");
    }

    @Test
    void anEntryIsExplainedInEightyColumns() throws IOException {
        Ran ran = Ran.small("explain", "panel-fractured");
        assertThat(ran.exit()).isZero();
        assertThat(ran.out())
                .isEqualTo(Files.readString(Path.of("src/test/resources/terminal/explain-panel-fractured.txt")));
        assertThat(ran.out().lines()).allMatch(l -> l.codePointCount(0, l.length()) <= 80);
    }

    @Test
    void explainingInPlainAsciiLosesNothing() {
        Ran ran = Ran.small(new Look(false, false), "explain", "panel-fractured");
        assertThat(ran.out()).contains("80 %  dark blobs at the fold").doesNotContain("?  dark");
    }

    @Test
    void aWordThatIsNothingIsRefusedWithTheNearest() {
        Ran ran = Ran.small("explain", "panel-fracture");
        assertThat(ran.exit()).isEqualTo(2);
        assertThat(ran.err()).contains("nothing called \"panel-fracture\". Did you mean \"panel-fractured\"?");
    }

    @Test
    void anEntryTellsItsToolsAndWhatMakesItRiskier() {
        String sweep = Ran.shipped("explain", "slow-fold-sweep").out().replaceAll("\\s+", " ");
        assertThat(sweep)
                .contains(
                        "Tools: camera and a scale for photos.",
                        "Where there is already: Inner panel cracked by a blow or a point.");
        String cracked = Ran.shipped("explain", "panel-impact-crack").out().replaceAll("\\s+", " ");
        assertThat(cracked.substring(cracked.indexOf("Makes riskier")))
                .contains("One slow filmed fold sweep (slow-fold-sweep). It may bring about: Inner panel fractured");
    }
}
