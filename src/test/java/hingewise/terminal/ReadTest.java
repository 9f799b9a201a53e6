package hingewise.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReadTest {
    @TempDir
    Path folder;

    private String file(String text, String charset) throws IOException {
        Path file = folder.resolve("listing.txt");
        Files.write(file, text.getBytes(Charset.forName(charset)));
        return file.toString();
    }

    @Test
    void jsonHoldsEachSuggestionWithItsWords() throws IOException {
        String text = "The inner screen is cracked.";
        Ran ran = Ran.shipped("read", file(text, "UTF-8"), "--json");
        assertThat(ran.exit()).as(ran.err()).isZero();
        JsonNode first =
                new ObjectMapper().readTree(ran.out()).get("suggestions").get(0);
        assertThat(first.get("observation").asText()).isEqualTo("inner-crack-visible");
        assertThat(first.get("answer").asText()).isEqualTo("yes");
        assertThat(first.get("certainty").asDouble()).isEqualTo(.95);
        assertThat(text.substring(first.get("start").asInt(), first.get("end").asInt()))
                .isEqualTo(first.get("quote").asText())
                .isEqualTo("inner screen is cracked");
    }

    @Test
    void thePageSaysWhatThePicturesShouldShowAndWhatIsNotTold() throws IOException {
        Ran ran = Ran.shipped("read", file("The back is cracked. It charges by cable.", "UTF-8"), "--family", "book");
        assertThat(ran.out())
                .contains("A back glass is cracked.", "back-cracked=yes")
                .contains("Does the listing show no picture of the lit inner screen?")
                .doesNotContain("Is a back glass cracked?")
                .doesNotContain("-  how it charges");
    }

    @Test
    void aGuessedEncodingIsSaid() throws IOException {
        Ran ran = Ran.shipped("read", file("Das große Display ist schwarz, es lädt nicht.", "windows-1252"), "--json");
        assertThat(ran.err()).contains("Windows-1252");
        assertThat(ran.out()).contains("charges-not-at-all");
    }

    @Test
    void nothingInATextSteersTheTerminal() throws IOException {
        Ran ran = Ran.shipped("read", file("The inner\u001b[2J screen is cracked.", "UTF-8"));
        assertThat(ran.out()).doesNotContain("\u001b");
    }

    @Test
    void whatCannotBeReadIsRefused() throws IOException {
        assertThat(Ran.shipped("read", folder.resolve("none").toString()).exit())
                .isEqualTo(2);
        assertThat(Ran.shipped("read", file("x".repeat(2_000_000), "UTF-8")).err())
                .contains("larger than 1 MiB");
        assertThat(Ran.shipped("read", file("x", "UTF-8"), "--family", "slab").err())
                .contains("no family \"slab\"");
    }

    @Test
    void mistakesInExamplesAreToldWhereTextsAreReadOrRulesChecked() throws IOException {
        Path rules = Files.createDirectory(folder.resolve("rules"));
        Files.copy(Path.of(Ran.SMALL_RULES, "book.yaml"), rules.resolve("book.yaml"));
        Files.writeString(rules.resolve("words.yaml"), """
                format: 1
                languages:
                  en:
                    label: English
                    stemming: english
                    common: [the]
                    sets: {screen: [screen]}
                    because: Invented for a test.
                    source: invented
                """);
        Path examples = Files.createDirectory(rules.resolve("examples")).resolve("own.yaml");
        Files.writeString(examples, """
                format: 1
                examples:
                  own:
                    language: fr
                    sentences: {}
                    because: Invented for a test.
                    source: invented
                """);
        String told = examples + ":4: \"fr\" is not a language.";
        Ran read = Ran.shipped("read", file("It is dark.", "UTF-8"), "--rules", rules.toString());
        assertThat(read.exit()).isEqualTo(ExitCode.RULE_PROBLEMS.number());
        assertThat(read.err()).contains("the rule book cannot be used:").contains(told);
        assertThat(Ran.shipped("check-rules", rules.toString()).out()).contains(told);
        assertThat(Ran.shipped("observations", "--rules", rules.toString()).exit())
                .isZero();
    }
}
