package hingewise.intake.csv;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringWriter;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RowWriterTest {
    private static String written(List<String> own, String... foreign) {
        StringWriter text = new StringWriter();
        try {
            new RowWriter(text).write(own, List.of(foreign));
        } catch (IOException e) {
            throw new AssertionError(e);
        }
        return text.toString();
    }

    /** The example of OWASP, "CSV Injection". */
    @Test
    void aFormulaIsQuotedAndGetsAnApostrophe() {
        assertThat(written(List.of(), "=1+2\";=1+2")).isEqualTo("\"'=1+2\"\";=1+2\"\r\n");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"=1", "+1", "-1", "@a", "\t=1", "\r=1", "\n=1", " =1", "\uFF1D1", "\uFF0B1", "\uFF0D1", "\uFF201"
            })
    void whateverASpreadsheetTakesForAFormulaIsDefused(String cell) {
        assertThat(written(List.of(), cell)).startsWith("\"'");
    }

    @Test
    void cleaningDoesNotMakeAFormula() {
        assertThat(written(List.of(), "\u0000=1")).isEqualTo("\uFFFD=1\r\n");
    }

    @Test
    void ourOwnNumbersStayNumbers() {
        assertThat(written(List.of("-12.50", "3"), "x")).isEqualTo("-12.50,3,x\r\n");
    }

    @Test
    void nothingWrittenCanSteerATerminal() {
        assertThat(written(List.of(), "a\u001b[2Jb\u009bc\u0000d\u202Ee\u0007"))
                .isEqualTo("a\uFFFD[2Jb\uFFFDc\uFFFDd\uFFFDe\uFFFD\r\n");
    }

    @Test
    void linesAndPictogramsOfATextStay() {
        String family = "\uD83D\uDC69\u200D\uD83D\uDD27";
        assertThat(written(List.of(), "one\r\ntwo\rthree " + family))
                .isEqualTo("\"one\ntwo\nthree " + family + "\"\r\n");
    }
}
