package hingewise.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SiftTest {
    private static final String HEADER = "id,text,price,shipping,family\n";

    @TempDir
    private Path folder;

    private Path sheet(String text) throws IOException {
        return Files.writeString(folder.resolve("sheet.csv"), text);
    }

    private static Ran sift(Path sheet, String... more) {
        List<String> arguments = new ArrayList<>(List.of("sift", sheet.toString()));
        arguments.addAll(List.of(more));
        return Ran.shipped(arguments.toArray(String[]::new));
    }

    private static List<JsonNode> lines(String json) throws IOException {
        List<JsonNode> lines = new ArrayList<>();
        for (String line : json.lines().toList()) {
            lines.add(new ObjectMapper().readTree(line));
        }
        return lines;
    }

    @Test
    void theDemoSheetComesBackRanked() throws IOException {
        Path sheet = Files.copy(Path.of("demo-cases/listings.csv"), folder.resolve("listings.csv"));
        Ran ran = sift(sheet, "--json");
        assertThat(ran.exit()).as(ran.err()).isZero();
        assertThat(ran.err())
                .contains("20 listings ranked, 0 rows skipped")
                .contains("nobody looked at it")
                .contains("most over-estimated");
        List<JsonNode> lines = lines(ran.out());
        assertThat(lines).hasSize(21);
        JsonNode whole = lines.get(0);
        assertThat(whole.path("format").asText()).isEqualTo("hingewise-sift");
        assertThat(whole.path("listings").asInt()).isEqualTo(20);
        assertThat(whole.path("correction").path("applied").asBoolean()).isTrue();
        List<JsonNode> listings = lines.subList(1, 21);
        assertThat(listings)
                .extracting(l -> l.path("rank").asInt())
                .isEqualTo(Stream.iterate(1, r -> r + 1).limit(20).toList());
        assertThat(listings)
                .extracting(l -> l.path("expectedProfit").asDouble())
                .isSortedAccordingTo(Comparator.reverseOrder());
        assertThat(listings).allSatisfy(l -> {
            assertThat(l.path("chanceOfLoss").asDouble()).isBetween(0.0, 1.0);
            assertThat(l.path("kept").asDouble()).isBetween(0.0, 1.0);
            assertThat(l.path("causes")).hasSize(3);
            boolean affordable = l.path("ceiling").asDouble()
                    >= Double.parseDouble(l.path("sheet").path("price").asText());
            assertThat(l.path("verdict").asText().equals("buy")).isEqualTo(affordable);
        });
        JsonNode bulging = listings.stream()
                .filter(l -> l.path("sheet").path("id").asText().equals("L-10"))
                .findFirst()
                .orElseThrow();
        assertThat(bulging.path("stops")).isNotEmpty();
        assertThat(bulging.path("verdict").asText()).isEqualTo("pass");
        assertThat(bulging.path("sheet").path("text").asText()).startsWith("Akku bläht sich auf");
    }

    @Test
    void aResultInAFileIsTheSheetWithMoreColumns() throws IOException {
        Path sheet = sheet(HEADER.strip() + ",colour\n"
                + "a,Back glass is cracked.,50,5,clamshell,=1+2\n"
                + "b,\"It is dead,\nreally\u001b[2J dead.\",50,5,clamshell,blue\n");
        Path out = folder.resolve("ranked.csv");
        Ran ran = sift(sheet, "--out", out.toString());
        assertThat(ran.exit()).as(ran.err()).isZero();
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).contains("not read but carried along: \"colour\"").contains("fewer than 4 listings");
        String text = Files.readString(out);
        assertThat(text)
                .startsWith("rank,expected-profit,chance-of-loss,ceiling,verdict,causes,ask,")
                .contains(",id,text,price,shipping,family,colour\r\n")
                .contains(",a,Back glass is cracked.,50,5,clamshell,\"'=1+2\"\r\n")
                .contains("\"It is dead,\nreally\uFFFD[2J dead.\"")
                .doesNotContain("\u001b");
        try (Stream<Path> left = Files.list(folder)) {
            assertThat(left).containsExactlyInAnyOrder(sheet, out);
        }
    }

    @Test
    void theBestFewCanBeAskedFor() throws IOException {
        Path sheet = sheet(HEADER + "a,Dead.,50,5,clamshell\nb,Dead.,40,5,clamshell\nc,Dead.,60,5,clamshell\n");
        List<JsonNode> lines = lines(sift(sheet, "--top", "1", "--json").out());
        assertThat(lines).hasSize(2);
        assertThat(lines.get(1).path("sheet").path("id").asText()).isEqualTo("b");
    }

    @Test
    void aBadRowIsToldAndTheExitCodeSaysSo() throws IOException {
        Path sheet = sheet(
                HEADER + "a,Dead.,fifty,5,clamshell\nb,Dead.,40,5,clamshell\n\u001b]0;x,Dead.,40,5,tab\u001blet\n");
        Ran ran = sift(sheet);
        assertThat(ran.exit()).isEqualTo(4);
        assertThat(ran.err())
                .contains("sheet.csv: line 2: the price \"fifty\" is not an amount")
                .contains("sheet.csv: line 4: no family is called \"tab\uFFFDlet\"")
                .contains("1 listing ranked, 2 rows skipped")
                .doesNotContain("\u001b");
        assertThat(ran.out()).doesNotContain("\u001b").contains(",b,Dead.,40,5,clamshell\r\n");
    }

    @Test
    void windows1252IsGuessedAndSaid() throws IOException {
        Path sheet = Files.write(
                folder.resolve("sheet.csv"),
                (HEADER + "a,Rückglas gebrochen,40,5,clamshell\n").getBytes(Charset.forName("windows-1252")));
        Ran ran = sift(sheet);
        assertThat(ran.exit()).as(ran.err()).isZero();
        assertThat(ran.err()).contains("line 2: a byte here is not UTF-8").contains("a guess");
        assertThat(ran.out()).contains("Rückglas gebrochen");
    }

    @Test
    void aQuotePerListingTakesThePlaceOfTheShopFiles() throws IOException {
        String rows = "a,Inner screen black.,90,5,clamshell,%s\n";
        List<Double> profits = new ArrayList<>();
        for (String quote : List.of("", "99", "429")) {
            Path sheet = sheet(HEADER.strip() + ",quote\n" + rows.formatted(quote));
            profits.add(lines(sift(sheet, "--json").out())
                    .get(1)
                    .path("expectedProfit")
                    .asDouble());
        }
        assertThat(profits.get(1)).isGreaterThan(profits.get(0));
        assertThat(profits.get(2)).as("the shop file's own quote").isEqualTo(profits.get(0));
    }

    @Test
    void whatCannotBeSiftedIsRefusedInOneSentence() throws IOException {
        refused(sift(folder.resolve("none.csv")), "none.csv: there is no such file");
        refused(sift(folder), "is a folder");
        refused(sift(sheet("")), "is empty");
        refused(sift(sheet("1,cracked,50,5,clamshell\n")), "names no column that is known");
        refused(sift(sheet("id,text,price,shipping,family,verdict\n")), "is one that the result adds");
        refused(sift(sheet("id,text,price,shipping,fam\u001bly\n")), "no column is called \"fam\uFFFDly\"");
        Path sheet = sheet(HEADER);
        refused(sift(sheet, "--top", "0"), "--top 0 is not a number from 1");
        refused(sift(sheet, "--resume"), "no work of an earlier run");
        refused(sift(sheet, "--out", sheet.toString()), "is the sheet itself");
        refused(sift(sheet, "--out", folder.toString()), "is a folder");
        assertThat(Files.readString(sheet)).isEqualTo(HEADER);
        Files.write(sheet, "id".getBytes(StandardCharsets.UTF_16));
        refused(sift(sheet), "UTF-16");
    }

    private static void refused(Ran ran, String sentence) {
        assertThat(ran.exit()).as(ran.err()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).contains(sentence).doesNotContain("\u001b").doesNotContain("Exception");
    }
}
