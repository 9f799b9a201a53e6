package hingewise.casefile.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CaseFileRefusalTest {
    private static final String GOOD = """
            {
             "format": "hingewise-case",
             "version": 1,
             "title": "Lot 7",
             "invented": true,
             "phone": {"family": "clamshell", "label": ""},
             "entries": [
              {"id": "e1", "at": "2026-11-20T10:00:00Z", "by": "me", "kind": "look", "about": "a", "answer": "yes"},
              {"id": "e2", "at": "2026-11-20T10:00:00Z", "by": "me", "kind": "look", "about": "b", "answer": "no"}
             ]
            }
            """;

    @TempDir
    Path folder;

    @Test
    void theUndamagedFileIsRead() throws IOException {
        assertThat(CaseFileStore.read(file(GOOD)).entries()).hasSize(2);
        assertThat(CaseFileStore.read(file("\uFEFF" + GOOD.replace("\n", "\r\n")))
                        .title())
                .isEqualTo("Lot 7");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
            "hingewise-case" | "other"          | :2:12: the format is "other", not "hingewise-case"; choose a case file of Hingewise
            "hingewise-case" | 3                | :2:12: "format" of the case must be a text in double quotes, but here is the number 3
            "version": 1     | "version": 7     | :3:13: a newer Hingewise wrote this file (the number 7 as its version, this program reads up to 2); it is left untouched, update Hingewise to open it
            "version": 1     | "version": 99999999999999999999 | :3:13: a newer Hingewise wrote this file
            "version": 1     | "version": 0     | :3:13: "version" of the case must be a whole number from 1 up, without quotes, but here is the number 0
            "version": 1     | "version": "1"   | :3:13: "version" of the case must be a whole number from 1 up, without quotes, but here is a text
            "version": 1     | "version": 1.0   | but here is the number 1.0
            "version": 1,    |                  | :1:1: the case lacks the key "version"; add it
            "title"          | "titel"          | :4:2: the case has no key "titel". Did you mean "title"?
            "title": "Lot 7" | "title": " "     | :4:11: "title" of the case is blank; fill it in
            "title": "Lot 7" | "title": null    | but here is null
            "invented": true | "invented": "no" | :5:14: "invented" of the case must be true or false, but here is a text
            "invented": true | "title": "two"   | :5:2: the key "title" stands here twice; remove one
            "clamshell"      | true             | "family" of the phone must be a text in double quotes, but here is true
            "label"          | "colour"         | the phone has no key "colour". Known are: family, label.
            {"family": "clamshell", "label": ""} | [] | the phone must be an object in braces, but here is a list
            "e2"             | "e1"             | :9:3: two entries have the id "e1". Give one of them another id.
            "e2"             | "\\ud800"         | holds half a character
            "look", "about": "b" | "fixed", "about": "b" | no entry is of the kind "fixed".
            "look", "about": "b" | "repair", "about": "b" | entry 2 has no key "about".
            "look", "about": "b", "answer": "no" | "withdrawal", "withdraws": "e9" | no earlier entry has that id
            "look", "about": "b", "answer": "no" | "repair", "parts": [], "grade": "g" | "parts" of entry 2 is empty
            "e2", "at": "2026-11-20 | "e2", "at": "2026-11-19 | Correct the date or the computer's clock
            "look", "about": "b" | "clam", "about": "b" | no entry is of the kind "clam". Did you mean "claim"?
            "about": "b", |                     | :9:3: entry 2 lacks the key "about"; add it
            "answer": "no"   | "answr": "no"    | entry 2 has no key "answr". Did you mean "answer"?
            "answer": "no"   | "answer": 0      | "answer" of entry 2 must be a text in double quotes, but here is the number 0
            11-20T10:00:00Z  | 02-30T10:00:00Z  | :8:22: "at" of entry 1 is "2026-02-30T10:00:00Z", which is no point in time; write it like 2026-11-20T10:00:00Z
            "look", "about": "b", "answer": "no" | "withdrawal", "withdraws": "e7" | :9:3: entry "e2" withdraws "e7", but no earlier entry has that id.
            "look", "about": "b", "answer": "no" | "withdrawal", "about": "e1" | entry 2 has no key "about"
            "look", "about": "b", "answer": "no" | "repair", "grade": "new", "parts": ["a", 3] | "parts" of entry 2 must hold texts, but here is the number 3
            "look", "about": "b", "answer": "no" | "repair", "grade": "new", "parts": "a" | "parts" of entry 2 must be a list in square brackets, but here is a text
            "look", "about": "b", "answer": "no" | "paid", "amount": "12.345", "currency": "EUR" | the amount is "12.345"; write a number with at most 2 decimals
            "look", "about": "b", "answer": "no" | "asked", "amount": "12", "currency": "EURO" | the currency "EURO" is not one of ISO 4217; write its code, such as EUR
            "look", "about": "b", "answer": "no" | "asked", "amount": 12, "currency": "EUR" | "amount" of entry 2 must be a text in double quotes, but here is the number 12
            "look", "about": "b", "answer": "no" | "paid", "amount": "12" | entry 2 lacks the key "currency"; add it
            11-20T10:00:00Z  | 11-21T10:00:00Z  | :9:3: entry "e2" is dated 2026-11-20T10:00:00Z, before entry "e1"
            "entries": [     | "entries": {     | :8:3: this is not JSON
            "entries": [     | "entries": [ 5,  | entry 1 must be an object in braces, but here is the number 5
            "entries": [     | "entries": [ [[[[[[[[[[[[[[[[ | stand too deep in one another
            true,            | tru,             | :5:
            true,            | NaN,             | :5:
            "Lot 7"          | "Lot             | :4:
            "version": 1     | "version": %s    | :3:
            """)
    void everyMistakeIsSaidWithItsPlaceAndItsRemedy(String good, String bad, String says) throws IOException {
        Path file = file(GOOD.replaceFirst(
                java.util.regex.Pattern.quote(good),
                bad == null ? "" : bad.formatted("9".repeat(2000)).replace("\\", "\\\\")));
        assertRefused(file, says);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
            ~~               | is empty
            ~ ~              | is empty
            []               | :1:1: the case must be an object in braces, but here is a list
            {                | :1:2: the file ends too early
            {} {}            | :1:4: something follows the end of the case; remove it
            key: value       | :1:
            """)
    void aFileOfSomethingElseIsRefused(String content, String says) throws IOException {
        assertRefused(file(content), says);
    }

    @Test
    void nulBytesAreNotJson() throws IOException {
        assertRefused(file(GOOD.replace("Lot 7", "Lot\0")), ":4:15: this is not JSON");
        assertRefused(file("\0".repeat(100)), ":1:");
    }

    @Test
    void bytesThatAreNotUtf8AreLocated() throws IOException {
        byte[] latin1 = GOOD.replace("Lot 7", "Caf\u00e9").getBytes(StandardCharsets.ISO_8859_1);
        Path file = Files.write(folder.resolve("case.json"), latin1);
        assertRefused(file, ":4:15: a byte here is not UTF-8; save the file as UTF-8 or take an earlier copy");
        assertRefused(Files.write(file, GOOD.getBytes(StandardCharsets.UTF_16)), ":1:1: a byte here is not UTF-8");
    }

    @Test
    void aMissingFileAndAFolderAreNamed() {
        assertRefused(folder.resolve("none.json"), ": there is no such file; check its name and folder");
        assertRefused(folder, ": is a folder; name a case file in it");
    }

    @Test
    void anEnormousFileIsRefusedBySizeAlone() throws IOException {
        Path file = folder.resolve("case.json");
        try (RandomAccessFile sparse = new RandomAccessFile(file.toFile(), "rw")) {
            sparse.setLength(1L << 30);
        }
        assertRefused(file, ": is larger than 16 MiB, so it is no case file; choose another");
    }

    @ParameterizedTest
    @ValueSource(strings = {"[", "{\"a\":"})
    void endlessNestingDoesNotExhaustTheStack(String opening) throws IOException {
        assertRefused(file(opening.repeat(1_000_000)), "stand too deep in one another; the file is damaged");
    }

    @Test
    void endlessListsDoNotExhaustTheMemory() throws IOException {
        assertRefused(file("[" + "0,".repeat(2_000_000)), "holds more than 1000000 values");
    }

    @Test
    void aMessageIsOneLineWithoutTerminalControls() throws IOException {
        Path file = file(GOOD.replace("\"title\"", "\"\\u001b[2J\\nx\""));
        assertRefused(file, ":4:2: the case has no key \"\uFFFD[2J x\"");
    }

    private Path file(String content) throws IOException {
        return Files.writeString(folder.resolve("case.json"), content);
    }

    private static void assertRefused(Path file, String says) {
        assertThatExceptionOfType(CaseFileException.class)
                .isThrownBy(() -> CaseFileStore.read(file))
                .withMessageStartingWith(file.toString())
                .withMessageContaining(says);
    }
}
