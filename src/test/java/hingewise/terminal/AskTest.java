package hingewise.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AskTest {
    @TempDir
    Path folder;

    private String file = "";

    @BeforeEach
    void startACase() {
        file = folder.resolve("case.json").toString();
        Ran.shipped("new", file, "--family", "clamshell", "--title", "Listing");
        Ran.shipped("record", file, "claim", "vibrates-no-image=yes");
    }

    @Test
    void theMessageHasThreeToFiveNumberedQuestionsInEachLanguage() {
        for (String language : new String[] {"en", "de"}) {
            Ran ran = Ran.shipped("ask", file, "--language", language);
            assertThat(ran.exit()).as(ran.err()).isZero();
            assertThat(ran.out()
                            .lines()
                            .filter(l -> l.matches("[1-9]\\. .+\\?"))
                            .count())
                    .as(ran.out())
                    .isBetween(3L, 5L);
        }
        assertThat(Ran.shipped("ask", file).out()).contains("English", "Deutsch");
    }

    @Test
    void englishStandsFirstUnlessTheClaimsWereNotedDownInAnotherLanguage() {
        String both = Ran.shipped("ask", file).out();
        assertThat(both.indexOf("English")).as(both).isLessThan(both.indexOf("Deutsch"));
        Ran.shipped(
                "record", file, "claim", "was-dropped=yes", "--remark", "Ist einmal runtergefallen, sonst geht alles");
        String german = Ran.shipped("ask", file).out();
        assertThat(german.indexOf("Deutsch")).as(german).isLessThan(german.indexOf("English"));
    }

    @Test
    void aReplyIsAnsweredByNumber() throws IOException {
        String first = new ObjectMapper()
                .readTree(Ran.shipped("ask", file, "--json").out())
                .at("/questions/0/observation")
                .asText();
        Path reply = Files.writeString(folder.resolve("reply.txt"), "1 yes, 2 no idea");
        Ran ran = Ran.shipped("ask", file, "--reply", reply.toString());
        assertThat(ran.out()).startsWith(first + "=yes").contains("=cant-tell", "No clear answer to");
    }

    @Test
    void nothingIsAskedOfTheSellerOnceThePhoneIsHere() {
        Ran.shipped("record", file, "look", "crease-blobs=yes");
        assertThat(Ran.shipped("ask", file).err()).contains("nothing left to ask");
    }

    @Test
    void anUnknownLanguageIsRefused() {
        assertThat(Ran.shipped("ask", file, "--language", "fr").err()).contains("no message can be written in \"fr\"");
    }
}
