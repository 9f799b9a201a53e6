package hingewise.rulebook.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Files and folders of which nothing can be read. */
class RefusedFilesTest {
    @TempDir
    Path folder;

    private Reading read() {
        return RuleBookReader.read(new Folder(folder, ""));
    }

    /** The one thing said of a file with this text beside an otherwise whole rule book. */
    private String saidOf(byte[] bytes) throws IOException {
        SmallBook.whole().readIn(folder);
        Files.write(folder.resolve("odd.yaml"), bytes);
        Reading reading = read();
        assertThat(reading.ruleBook()).isEmpty();
        assertThat(reading.problems()).hasSize(1);
        return reading.problems().get(0).text();
    }

    private String saidOf(String text) throws IOException {
        return saidOf(text.getBytes(StandardCharsets.UTF_8));
    }

    @Test
    void aFolderThatIsNotThere() {
        assertThat(RuleBookReader.read(folder.resolve("gone")).problems())
                .singleElement()
                .extracting(Problem::text)
                .isEqualTo(folder.resolve("gone")
                        + ": there is no such folder. Name the folder that holds the rule book.");
    }

    @Test
    void aFileInsteadOfAFolder() throws IOException {
        Path file = Files.writeString(folder.resolve("book.yaml"), "format: 1");
        assertThat(RuleBookReader.read(file).problems())
                .singleElement()
                .extracting(Problem::what)
                .isEqualTo("this is not a folder");
    }

    @Test
    void aFolderWithoutRules() throws IOException {
        Files.writeString(folder.resolve("README.md"), "words");
        assertThat(read().problems())
                .singleElement()
                .extracting(Problem::what)
                .isEqualTo("there is no .yaml file in this folder");
    }

    @Test
    void aFolderInsteadOfAFile() throws IOException {
        SmallBook.whole().readIn(folder);
        Files.createDirectory(folder.resolve("odd.yaml"));
        assertThat(read().problems())
                .extracting(Problem::text)
                .containsExactly(
                        "odd.yaml: this is not a file. Name an ordinary file, or move this out of the rule book's folder.");
    }

    @Test
    void aNameThatWouldBePassedOver() throws IOException {
        SmallBook.whole().readIn(folder);
        Files.writeString(folder.resolve("odd.yml"), "format: 1");
        assertThat(read().problems())
                .extracting(Problem::text)
                .containsExactly("odd.yml: files ending in \".yml\" are not read. Let its name end in \".yaml\".");
    }

    @Test
    void hiddenFilesArePassedOver() throws IOException {
        SmallBook.whole().readIn(folder);
        Files.writeString(folder.resolve(".#book.yaml"), "%");
        assertThat(read().problems()).isEmpty();
    }

    @Test
    void aFileOfAGigabyteIsNotRead() throws IOException {
        SmallBook.whole().readIn(folder);
        try (RandomAccessFile file =
                new RandomAccessFile(folder.resolve("odd.yaml").toFile(), "rw")) {
            file.setLength(1L << 30);
        }
        assertThat(read().problems())
                .extracting(Problem::text)
                .containsExactly(
                        "odd.yaml: the file is larger than 4 MiB. Divide it, or take out what does not belong in it.");
    }

    @Test
    void aFileThatHasJustTheLargestSizeIsRead() throws IOException {
        SmallBook.whole().readIn(folder);
        String text = "format: 1\n" + ("#".repeat(Source.LONGEST_LINE) + "\n").repeat(500);
        Files.writeString(folder.resolve("odd.yaml"), text.substring(0, Source.LARGEST_BYTES));
        assertThat(read().problems()).isEmpty();
    }

    @Test
    void aLineWithoutEnd() throws IOException {
        assertThat(saidOf("format: 1\n#" + "x".repeat(Source.LONGEST_LINE)))
                .isEqualTo("odd.yaml:2: this line has more than 10000 characters. Break it into several lines.");
    }

    @Test
    void textThatIsNotUtf8() throws IOException {
        assertThat(saidOf("format: 1\n# caf\u00e9\n".getBytes(StandardCharsets.ISO_8859_1)))
                .isEqualTo("odd.yaml:2: this is not UTF-8 text. Save the file as UTF-8.");
    }

    @Test
    void textThatBreaksOffInsideACharacter() throws IOException {
        assertThat(saidOf(new byte[] {'#', (byte) 0xE2, (byte) 0x80}))
                .isEqualTo("odd.yaml:1: this is not UTF-8 text. Save the file as UTF-8.");
    }

    @Test
    void aByteOrderMarkIsPassedOver() throws IOException {
        SmallBook.whole().readIn(folder);
        Files.writeString(folder.resolve("odd.yaml"), "\uFEFFformat: 1\n");
        assertThat(read().problems()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            ''                                | odd.yaml:1: the file is empty
            '# only a remark\\n'              | odd.yaml:1: the file is empty
            'parts: {}\\n'                    | odd.yaml:1: the file does not say which format it has
            'format: 2\\n'                    | odd.yaml:1: the file is in format 2, made for a later version of this program, which reads format 1; what changed stands in that version's rules/README.md
            'parts: {}\\nformat: one\\n'      | odd.yaml:2: the format is "one", and there is only format 1
            'format: [1]\\n'                  | odd.yaml:1: the format is a list, and there is only format 1
            '- format: 1\\n'                  | odd.yaml:1: the file holds a list, where sections should be
            'rules\\n'                        | odd.yaml:1: the file holds "rules", where sections should be
            'format: 1\\n---\\nformat: 1\\n'  | odd.yaml:3: a second document begins here
            'format: 1\\nparts:\\n\\tglue:\\n'| odd.yaml:3: there is a tab in this line
            'format: 1\\n# \\7'           | odd.yaml:2: there is a character U+0007 in this line, which cannot be seen
            'format: 1\\nparts: &p {}\\n'     | odd.yaml:2: this is marked with "&" to be used again
            'format: 1\\nparts: *p\\n'        | odd.yaml:2: this refers to another place by "*"
            'format: 1\\nparts: !!map {}\\n'  | odd.yaml:2: this is tagged with "!"
            'format: 1\\nparts: {\\n'         | odd.yaml:3: this is not readable YAML (expected the node content, but found '<stream end>')
            'format: 1\\nparts: a: b\\n'      | odd.yaml:2: this is not readable YAML (mapping values are not allowed here)
            'format: 1\\n? [a]\\n: b\\n'      | odd.yaml:2: this is not readable YAML (a key must be a plain word)
            """)
    void aTextThatIsNoRuleFile(String text, String said) throws IOException {
        assertThat(saidOf(text.translateEscapes())).startsWith(said + ". ");
    }

    @Test
    void aBombOfAliasesIsNotExpanded() throws IOException {
        StringBuilder bomb = new StringBuilder("format: 1\na0: &a0 [x, x]\n");
        for (int i = 1; i < 60; i++) {
            bomb.append("a%d: &a%d [*a%d, *a%d]%n".formatted(i, i, i - 1, i - 1));
        }
        assertThat(saidOf(bomb.toString()))
                .isEqualTo("odd.yaml:2: this is marked with \"&\" to be used again. Write it out wherever it is used.");
    }

    @Test
    void nestingThatIsTooDeep() throws IOException {
        assertThat(saidOf("format: 1\nparts: " + "[".repeat(9_000)))
                .startsWith("odd.yaml:2: this is nested more than 12 levels deep. ");
    }

    @Test
    void manyMistakesAreReportedWithoutSeekingNearWordsForAll() throws IOException {
        StringBuilder text = new StringBuilder("format: 1\nparts:\n");
        for (int i = 0; i < 20_000; i++) {
            text.append("  part-%d: {renews: [nothing-%d]}%n".formatted(i, i));
        }
        SmallBook.whole().readIn(folder);
        Files.writeString(folder.resolve("odd.yaml"), text);
        assertThat(read().problems())
                .hasSizeGreaterThan(100_000)
                .last()
                .extracting(Problem::line)
                .isEqualTo(20_002);
    }

    @Test
    void aFileThatCannotBeOpenedHidesNoMistakeOfTheOthers() throws IOException {
        SmallBook.whole().without("phone.yaml").readIn(folder);
        Files.writeString(folder.resolve("phone.yaml"), "format: 2");
        Files.writeString(
                folder.resolve("book.yaml"), SmallBook.whole().text("book.yaml").replace("EUR", "EUX"));
        assertThat(read().problems())
                .extracting(Problem::what)
                .containsExactly(
                        "\"EUX\" is not a currency",
                        "the file is in format 2, made for a later version of this program, which reads format 1; what"
                                + " changed stands in that version's rules/README.md");
    }
}
