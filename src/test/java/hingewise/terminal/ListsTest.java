package hingewise.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ListsTest {
    @Test
    void everyQuestionIsListedWithItsAnswersAndMoments() throws IOException {
        JsonNode list =
                new ObjectMapper().readTree(Ran.small("observations", "--json").out());
        assertThat(list.at("/questions")).hasSize(8);
        JsonNode choice = list.at("/questions/0");
        assertThat(choice.at("/id").asText()).isEqualTo("power-on");
        assertThat(choice.at("/question").asText()).isEqualTo("What happens when the power key is held?");
        assertThat(choice.at("/answers/1/id").asText()).isEqualTo("buzz");
        assertThat(choice.at("/answers/1/settles/vibrates-no-image").asBoolean())
                .isTrue();
        assertThat(choice.at("/moments")).hasToString("[\"arrival\"]");
    }

    @Test
    void familyAndMomentNarrowTheList() {
        String all = Ran.small("observations").out();
        assertThat(all).contains("8 questions").contains("cover-plug-out").contains("answers  yes, no");
        assertThat(Ran.small("observations", "--family", "book").out())
                .contains("6 questions")
                .doesNotContain("dead-cover-screen");
        assertThat(Ran.small("observations", "--moment", "opened").out())
                .contains("1 question;")
                .contains("cover-plug-out");
    }

    @Test
    void aSoundRuleBookIsSummedUp() {
        Ran ran = Ran.run(Ran.PLAIN, "check-rules", Ran.SMALL_RULES);
        assertThat(ran.exit()).isZero();
        // .02 and with chance .2 also .2: 1 − .98 · (1 − .2 · .2) = .0592, worked by hand
        assertThat(ran.out())
                .contains("3 causes, 7 observations")
                .containsPattern("cover-cable-loose +5\\.920 +-\n")
                .contains("Over 1 case at most")
                .contains("Over 50 random sets at most");
    }

    @Test
    void theRuleBookThatComesWithTheProgramHasNoProblem() {
        Ran ran = Ran.shipped("check-rules");
        assertThat(ran.out()).doesNotContain(" problem");
        assertThat(ran.exit()).isZero();
    }

    @Test
    void whatIsProbablyNotMeantIsAWarningWithFileAndLine() {
        Ran ran = Ran.run(Ran.PLAIN, "check-rules", "--untried", Ran.SMALL_RULES);
        assertThat(ran.exit()).isZero();
        assertThat(ran.out())
                .containsPattern(
                        "book\\.yaml:[0-9]+: warning: \"swollen-battery\": no confirmation bears on it\\. Add a question")
                .contains("5 of 6 links between causes, signs and histories are tried by no case.")
                .contains("no case tries its links with dead-cover-screen, opened-before.");
        assertThat(Ran.run(Ran.PLAIN, "check-rules", Ran.SMALL_RULES).out())
                .contains("; --untried")
                .doesNotContain("no case tries its links");
    }

    @Test
    void sensitivityIsToldWithItsSeedAndItsProgressApart() {
        Ran ran = Ran.run(
                Ran.PLAIN,
                "check-rules",
                "--sensitivity",
                "--draws",
                "20",
                "--case",
                "src/test/resources/terminal/case.json",
                "--seed",
                "3",
                "--prices",
                Ran.SMALL_PRICES,
                Ran.SMALL_RULES);
        assertThat(ran.exit()).isZero();
        assertThat(ran.out())
                .contains("27 numbers moved at once")
                .containsPattern(";\\s+2\\s+cases")
                .contains("20 times, seed 3")
                .containsPattern("first cause +[0-9.]+ +[0-9.]+\n")
                .contains("Fewer than 40 draws do not tell which numbers matter most.");
        assertThat(ran.err()).contains("40 of 40 disturbed rule books answered");
    }

    @Test
    void drawsThatSayNothingAreRefused() {
        Ran ran = Ran.run(Ran.PLAIN, "check-rules", "--sensitivity", "--draws", "0", Ran.SMALL_RULES);
        assertThat(ran.exit()).isEqualTo(2);
        assertThat(ran.err()).contains("--draws is 0; give a number from 3 to 10000");
    }

    @Test
    void everyProblemIsListedWithFileAndLineUnwrapped(@TempDir Path folder) throws IOException {
        String sound = Files.readString(Path.of(Ran.SMALL_RULES, "book.yaml"));
        Files.writeString(
                folder.resolve("book.yaml"),
                sound.replace("component: battery", "component: batery").replace("leak: .005", "leak: 5"));
        Ran ran = Ran.run(Ran.PLAIN, "check-rules", folder.toString());
        assertThat(ran.exit()).isEqualTo(1);
        assertThat(ran.out().lines().filter(l -> l.matches(".*book\\.yaml:[0-9]+: .*")))
                .hasSizeGreaterThanOrEqualTo(3)
                .anyMatch(l -> l.contains("\"batery\""));
        assertThat(ran.err()).isEmpty();
    }

    @Test
    void aFolderThatIsNotThereIsAProblem(@TempDir Path folder) {
        Ran ran = Ran.run(Ran.PLAIN, "check-rules", folder.resolve("nowhere").toString());
        assertThat(ran.exit()).isEqualTo(1);
        assertThat(ran.out()).contains("nowhere");
    }
}
