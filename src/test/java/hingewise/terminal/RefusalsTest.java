package hingewise.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class RefusalsTest {
    static Stream<Arguments> badCommands() {
        return Stream.of(
                bad("has no observation \"crease-blob\". Did you mean \"crease-blobs\"?", "crease-blob=yes"),
                bad("\"maybe\" is not an answer to \"crease-blobs\"; use yes, no or cant-tell", "crease-blobs=maybe"),
                bad("\"buz\" is not an answer to \"power-on\"; use image, buzz, nothing or cant-tell", "power-on=buz"),
                bad(
                        "\"photograph\" is not a kind of evidence; use claim, photo, look, meter",
                        "crease-blobs=yes@photograph"),
                bad("\"\" is not a kind of evidence", "crease-blobs=yes@"),
                bad("write it as ID=ANSWER", "crease-blobs"),
                bad("write it as ID=ANSWER", "=yes"),
                bad("write it as ID=ANSWER", "crease-blobs="),
                bad(
                        "\"crease-blobs=yes\" and --seen \"crease-blobs=no\" contradict each other, and both are a look",
                        "crease-blobs=yes",
                        "crease-blobs=no"),
                bad(
                        "\"crease-blobs=no@claim\" and --seen \"crease-blobs=yes@claim\" contradict each other",
                        "crease-blobs=no@claim",
                        "crease-blobs=yes",
                        "crease-blobs=yes@claim"),
                bad(
                        "\"power-on=image\" and --seen \"vibrates-no-image=yes\" contradict each other",
                        "power-on=image",
                        "vibrates-no-image=yes"));
    }

    private static Arguments bad(String sentence, String... seen) {
        return Arguments.of(sentence, seen);
    }

    @ParameterizedTest
    @MethodSource("badCommands")
    void whatCannotBeMeantIsRefusedInOneSentence(String sentence, String[] seen) {
        String[] arguments = Stream.concat(Stream.of("assess", "--family", "clamshell", "--seen"), Stream.of(seen))
                .toArray(String[]::new);
        refused(Ran.small(arguments), sentence);
    }

    @Test
    void whatTheRuleBookLacksIsRefusedWithTheFileItStandsIn(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("odd.json");
        Files.writeString(
                file,
                Files.readString(Path.of("src/test/resources/terminal/case.json"))
                        .replace("\"crease-blobs\"", "\"crease-blob\""));
        for (String command : new String[] {"assess", "note", "history"}) {
            refused(
                    Ran.small(command, file.toString()),
                    file + ": entry \"p1\": \"crease-blob\" is not an observation. Did you mean \"crease-blobs\"?");
        }
    }

    @Test
    void twoSourcesMayContradictEachOther() {
        assertThat(Ran.small("assess", "--family", "book", "--seen", "crease-blobs=no@claim", "crease-blobs=yes")
                        .exit())
                .isZero();
        assertThat(Ran.small("assess", "--family", "book", "--seen", "crease-blobs=yes", "crease-blobs=yes")
                        .exit())
                .isZero();
    }

    @Test
    void aQuestionOfAnotherFamilyIsRefused() {
        refused(
                Ran.small("assess", "--family", "book", "--seen", "dead-cover-screen=yes"),
                "\"dead-cover-screen\" is not asked of the family \"book\"");
    }

    @Test
    void anUnknownFamilyIsRefusedWithTheKnownOnes() {
        refused(
                Ran.small("assess", "--family", "clamshel", "--seen", "crease-blobs=yes"),
                "has no family \"clamshel\". Did you mean \"clamshell\"?");
        refused(Ran.small("assess", "--family", "brick"), "Known are: clamshell, book.");
        refused(Ran.small("observations", "--family", "brick"), "Known are: clamshell, book.");
        refused(Ran.small("assess", "--seen", "crease-blobs=yes"), "name the family with --family: clamshell, book");
    }

    @Test
    void anUnknownMomentIsRefused() {
        refused(Ran.small("observations", "--moment", "openend"), "Did you mean \"opened\"?");
    }

    @Test
    void everyMistakeIsToldAtOnce() {
        Ran ran = Ran.small("assess", "--family", "book", "--seen", "crease-blob=yes", "back-loose=perhaps");
        assertThat(ran.err().lines()).hasSize(2);
    }

    @Test
    void aCaseFileAndWhatWasSeenExcludeEachOther() {
        refused(Ran.small("assess", "some.json", "--family", "book"), "not both");
    }

    @Test
    void aMissingCaseFileIsNamed(@TempDir Path folder) {
        refused(Ran.small("assess", folder.resolve("none.json").toString()), "none.json: there is no such file");
        refused(Ran.small("note", folder.resolve("none.json").toString()), "none.json: there is no such file");
    }

    @Test
    void aBrokenCaseFileIsNamedWithItsLine(@TempDir Path folder) throws IOException {
        Path broken = Files.writeString(folder.resolve("broken.json"), "{\n  \"format\": oops\n}\n");
        refused(Ran.small("assess", broken.toString()), "broken.json:2");
    }

    @Test
    void aCaseFileWithAnUnknownObservationIsRefused(@TempDir Path folder) throws IOException {
        String text = Files.readString(Path.of("src/test/resources/terminal/case.json"));
        Path wrong = Files.writeString(folder.resolve("wrong.json"), text.replace("crease-blobs", "crease-bloobs"));
        refused(Ran.small("assess", wrong.toString()), "Did you mean \"crease-blobs\"?");
    }

    @Test
    void anUnknownOptionOrCommandIsRefused() {
        refused(Ran.small("assess", "--famly", "book"), "--famly");
        refused(Ran.shipped("asses"), "asses");
        refused(Ran.shipped(), "no window: ");
        refused(Ran.small("assess", "--colour", "mauve"), "mauve");
    }

    @Test
    void aRuleBookWithProblemsIsNotUsed(@TempDir Path folder) throws IOException {
        Files.writeString(folder.resolve("a.yaml"), "format: 1\ncauses: 3\n");
        Ran ran = Ran.run(Ran.PLAIN, "assess", "--family", "book", "--rules", folder.toString());
        assertThat(ran.exit()).isEqualTo(1);
        assertThat(ran.err()).contains("the rule book cannot be used").contains("a.yaml:2");
        assertThat(ran.out()).isEmpty();
    }

    @Test
    void theRuleBookMayBeNamedBeforeTheCommand(@TempDir Path folder) throws IOException {
        Files.writeString(folder.resolve("a.yaml"), "format: 1\ncauses: 3\n");
        String[] commands = {"observations", "check-rules"};
        for (String command : commands) {
            Ran ran = Ran.run(Ran.PLAIN, "--rules", folder.toString(), command);
            assertThat(ran.exit()).as(command).isEqualTo(1);
            assertThat(ran.out() + ran.err()).as(command).contains("a.yaml:2");
        }
        refused(
                Ran.run(Ran.PLAIN, "check-rules", folder.toString(), "--rules", Ran.SMALL_RULES),
                "the folder is named twice");
    }

    @Test
    void messagesCannotSteerTheTerminal() {
        Ran ran = Ran.small("assess", "--family", "book", "--seen", "\u001B[31mx=yes");
        refused(ran, "has no observation");
        assertThat(ran.err()).doesNotContain("\u001B");
        assertThat(Ran.small("assess", "--\u001B[31m").err()).doesNotContain("\u001B");
    }

    private static void refused(Ran ran, String sentence) {
        assertThat(ran.err()).contains(sentence).doesNotContain("\tat ").doesNotContain("Exception");
        assertThat(ran.exit()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
    }
}
