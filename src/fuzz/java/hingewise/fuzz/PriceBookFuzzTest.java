package hingewise.fuzz;

import com.code_intelligence.jazzer.api.FuzzedDataProvider;
import com.code_intelligence.jazzer.junit.FuzzTest;
import hingewise.costing.csv.PriceBookReader;
import hingewise.costing.csv.Reading;
import hingewise.rulebook.RuleBook;
import hingewise.rulebook.yaml.RuleBookReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.nio.file.StandardOpenOption;

class PriceBookFuzzTest {
    private static final RuleBook RULES = RuleBookReader.readShipped().ruleBook().orElseThrow();
    private static final String HEADER = "part,supplier,price,currency,grade,days,bad-on-arrival\nalcohol,";

    @FuzzTest(maxDuration = "60s")
    void anyFileIsReadOrRefusedInWords(FuzzedDataProvider data) throws IOException {
        Path file = Files.createTempFile("prices", ".csv");
        try {
            String start = data.consumeBoolean() ? HEADER : "";
            Files.writeString(file, start);
            Files.write(file, data.consumeRemainingAsBytes(), StandardOpenOption.APPEND);
            Reading reading = PriceBookReader.read(file, RULES, LocalDate.EPOCH);
            if (reading.priceBook().isPresent() != reading.problems().isEmpty()) {
                throw new AssertionError("neither read nor refused: " + reading.problems());
            }
            if (reading.problems().stream().anyMatch(problem -> problem.indexOf('\n') >= 0)) {
                throw new AssertionError("a problem of more than one line: " + reading.problems());
            }
        } finally {
            Files.deleteIfExists(file);
        }
    }
}
