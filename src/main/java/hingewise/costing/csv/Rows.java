package hingewise.costing.csv;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.dataformat.csv.CsvFactory;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/** Divides comma-separated text into rows of cells, quoted as RFC 4180 section 2 has it. */
final class Rows {
    /** @param line where the row begins, from 1 */
    record Row(int line, List<String> cells) {}

    private static final CsvFactory CSV = CsvFactory.builder()
            .enable(CsvParser.Feature.SKIP_EMPTY_LINES)
            .enable(CsvParser.Feature.TRIM_SPACES)
            .build();

    private Rows() {}

    /** All rows, or those before the place where the text cannot be divided, which is then a problem. */
    static List<Row> of(String text, Problems problems) {
        List<Row> rows = new ArrayList<>();
        try (CsvParser parser = CSV.createParser(text)) {
            while (parser.nextToken() == JsonToken.START_ARRAY) {
                List<String> cells = new ArrayList<>();
                int line = 0;
                while (parser.nextToken() != JsonToken.END_ARRAY) {
                    line = line == 0 ? parser.currentTokenLocation().getLineNr() : line;
                    cells.add(parser.getText());
                }
                rows.add(new Row(line, cells));
            }
        } catch (JsonProcessingException e) {
            int line = rows.isEmpty() ? 1 : rows.get(rows.size() - 1).line() + 1;
            problems.add(
                    line, "from here on the rows cannot be told apart; a quote was probably never closed, close it");
        } catch (IOException e) {
            throw new IllegalStateException("reading from memory failed", e);
        }
        return rows;
    }
}
