package hingewise.intake.csv;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RowReaderTest {
    @TempDir
    private Path folder;

    private List<Row> rows(String text) throws IOException {
        return rows(text.getBytes(StandardCharsets.UTF_8), Encoding.UTF_8);
    }

    private List<Row> rows(byte[] bytes, Encoding encoding) throws IOException {
        Path sheet = Files.write(folder.resolve("sheet.csv"), bytes);
        try (RowReader reader = new RowReader(sheet, encoding, 0, 1)) {
            List<Row> rows = new ArrayList<>();
            for (Optional<Row> row = reader.next(); row.isPresent(); row = reader.next()) {
                rows.add(row.get());
            }
            return rows;
        }
    }

    /** RFC 4180 section 2, rules 1, 2, 5, 6 and 7 with their examples. */
    @Test
    void rowsAreDividedAsTheStandardHasIt() throws IOException {
        assertThat(rows("aaa,bbb,ccc\r\nzzz,yyy,xxx"))
                .extracting(Row::cells)
                .containsExactly(List.of("aaa", "bbb", "ccc"), List.of("zzz", "yyy", "xxx"));
        assertThat(rows("\"aaa\",\"b\r\nbb\",\"ccc\"\r\nzzz,yyy,xxx\r\n"))
                .extracting(Row::cells)
                .containsExactly(List.of("aaa", "b\r\nbb", "ccc"), List.of("zzz", "yyy", "xxx"));
        assertThat(rows("\"aaa\",\"b\"\"bb\",\"ccc\""))
                .extracting(Row::cells)
                .containsExactly(List.of("aaa", "b\"bb", "ccc"));
    }

    @Test
    void whatCanOnlyMeanOneThingIsReadThoughTheStandardForbidsIt() throws IOException {
        assertThat(rows("a, \"b,c\" ,6.7\" inner\rd,,\n\n\r\ne,f,\"\"\n"))
                .extracting(Row::cells)
                .containsExactly(List.of("a", "b,c", "6.7\" inner"), List.of("d", "", ""), List.of("e", "f", ""));
    }

    @Test
    void eachRowTellsWhereItBeganAndWhereTheNextOneDoes() throws IOException {
        String text = "a,b\n\"1\n2\",x\r\n\nlast,y\n";
        List<Row> rows = rows(text);
        assertThat(rows).extracting(Row::line).containsExactly(1L, 2L, 5L);
        assertThat(rows).extracting(Row::endLine).containsExactly(2L, 4L, 6L);
        assertThat(rows.get(1).end()).isEqualTo(text.indexOf("\nlast"));
        try (RowReader reader = new RowReader(
                folder.resolve("sheet.csv"), Encoding.UTF_8, rows.get(1).end(), 4)) {
            assertThat(reader.next()).contains(rows.get(2));
        }
    }

    @Test
    void aQuoteThatIsNeverClosedCostsItsOwnRowOnly() throws IOException {
        List<Row> rows = rows("a,b\n1,\"open\n2,fine\n3,\"also fine\"\n4,\"open again\n5,last\n");
        assertThat(rows).extracting(Row::line).containsExactly(1L, 2L, 3L, 4L, 5L, 6L);
        assertThat(rows).extracting(Row::usable).containsExactly(true, false, true, true, false, true);
        assertThat(rows.get(1).problem()).contains("never closed");
        assertThat(rows.get(5).cells()).containsExactly("5", "last");
    }

    @Test
    void aCellOfTenMegabytesIsPassedOver() throws IOException {
        String huge = "x".repeat(10_000_000);
        for (String cell : List.of(huge, "\"" + huge + "\"", "\"" + "line\n".repeat(2_000_000) + "\"")) {
            List<Row> rows = rows("a,b\n1," + cell + "\n2,fine\n");
            assertThat(rows).hasSize(3);
            assertThat(rows.get(1).problem()).contains("bytes long").contains("131072");
            assertThat(rows.get(2).cells()).containsExactly("2", "fine");
        }
    }

    @Test
    void aRowOfTheLargestSizeIsStillRead() throws IOException {
        String text = "x".repeat(RowReader.LONGEST - 1);
        assertThat(rows(text))
                .singleElement()
                .satisfies(r -> assertThat(r.cells()).containsExactly(text));
        assertThat(rows(text + "x"))
                .singleElement()
                .satisfies(r -> assertThat(r.usable()).isFalse());
    }

    /** Many quotes left open must not mean reading the sheet as many times over. */
    @Test
    void aSheetOfOpenQuotesIsReadInOneGo() throws IOException {
        List<Row> rows = rows("1,\"open\n".repeat(20_001) + "end,x\n");
        assertThat(rows.size()).isGreaterThan(20_000);
        assertThat(rows.get(rows.size() - 1).cells()).containsExactly("end", "x");
    }

    @Test
    void aByteThatIsNoCharacterCostsItsRowOnly() throws IOException {
        byte[] bytes = "a,caf?\nb,plain\n".getBytes(StandardCharsets.UTF_8);
        bytes[5] = (byte) 0xE9;
        List<Row> asUtf8 = rows(bytes, Encoding.UTF_8);
        assertThat(asUtf8).extracting(Row::usable).containsExactly(false, true);
        assertThat(asUtf8.get(0).problem()).contains("not UTF-8");
        assertThat(rows(bytes, Encoding.WINDOWS_1252).get(0).cells()).containsExactly("a", "café");
        bytes[5] = (byte) 0x81;
        assertThat(rows(bytes, Encoding.WINDOWS_1252).get(0).usable()).isFalse();
    }

    @Test
    void whatIsWrittenIsReadBack() throws IOException {
        for (int seed = 1; seed <= 200; seed++) {
            Random random = new Random(seed);
            List<List<String>> written = new ArrayList<>();
            StringWriter text = new StringWriter();
            RowWriter writer = new RowWriter(text);
            int columns = 2 + random.nextInt(4);
            for (int r = 0; r < 1 + random.nextInt(20); r++) {
                List<String> cells = new ArrayList<>();
                for (int c = 0; c < columns; c++) {
                    cells.add("r" + cell(random));
                }
                written.add(cells);
                writer.write(List.of(), cells);
            }
            assertThat(rows(text.toString()))
                    .as("seed %d", seed)
                    .extracting(Row::cells)
                    .isEqualTo(written);
        }
    }

    private static String cell(Random random) {
        String alphabet = "ab \"',;\nä€\uD83D\uDCF1=-";
        StringBuilder cell = new StringBuilder();
        for (int i = random.nextInt(12); i > 0; i--) {
            int at = random.nextInt(alphabet.length());
            if (!Character.isSurrogate(alphabet.charAt(at))) {
                cell.append(alphabet.charAt(at));
            }
        }
        return cell.toString();
    }

    /** Rows cut, doubled and sprinkled with quotes: never more than the bytes, never stuck, always whole lines. */
    @Test
    void anyBytesAtAllAreReadToTheirEnd() throws IOException {
        byte[] pieces = "\",\r\n a\u00e9".getBytes(StandardCharsets.ISO_8859_1);
        for (int seed = 1; seed <= 2_000; seed++) {
            Random random = new Random(seed);
            byte[] bytes = new byte[1 + random.nextInt(60)];
            for (int i = 0; i < bytes.length; i++) {
                bytes[i] = pieces[random.nextInt(pieces.length)];
            }
            List<Row> rows = rows(bytes, Encoding.WINDOWS_1252);
            long line = 0;
            for (Row row : rows) {
                assertThat(row.line()).as("seed %d", seed).isGreaterThan(line);
                assertThat(row.endLine()).as("seed %d", seed).isGreaterThanOrEqualTo(row.line());
                line = row.line();
            }
            assertThat(rows.isEmpty() ? 0 : rows.get(rows.size() - 1).end())
                    .as("seed %d", seed)
                    .isLessThanOrEqualTo(bytes.length);
        }
    }
}
