package hingewise.intake.csv;

import hingewise.plain.Quoted;
import java.io.IOException;
import java.io.Writer;
import java.util.List;

/**
 * Writes rows as RFC 4180 has them, every row ended by CR LF. What comes from outside cannot act: a cell that a
 * spreadsheet would take for a formula gets an apostrophe in front and is quoted (OWASP, "CSV Injection": cells beginning
 * with = + - @, tab or CR; also the wide forms of those signs), and characters that steer a terminal become a
 * replacement mark.
 */
public final class RowWriter {
    private static final String FORMULA = "=+-@\t\r\n\uFF1D\uFF0B\uFF0D\uFF20";

    private final Writer out;

    public RowWriter(Writer out) {
        this.out = out;
    }

    /**
     * One row.
     *
     * @param own cells made by the program, such as numbers, which are never formulas even with a minus in front
     * @param foreign cells from outside, written after those
     */
    public void write(List<String> own, List<String> foreign) throws IOException {
        String comma = "";
        for (String cell : own) {
            out.write(comma);
            out.write(quoted(Quoted.lines(cell)));
            comma = ",";
        }
        for (String cell : foreign) {
            out.write(comma);
            out.write(quoted(defused(cell)));
            comma = ",";
        }
        out.write("\r\n");
    }

    private static String defused(String cell) {
        // Looked at before and after, for cleaning takes away some of the characters that make a formula.
        String clean = Quoted.lines(cell);
        return formula(cell) || formula(clean) ? "'" + clean : clean;
    }

    private static boolean formula(String cell) {
        String start = cell.stripLeading();
        return !cell.isEmpty() && FORMULA.indexOf(cell.charAt(0)) >= 0
                || !start.isEmpty() && FORMULA.indexOf(start.charAt(0)) >= 0;
    }

    private static String quoted(String cell) {
        boolean plain = cell.chars().noneMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r' || c == '\'')
                && cell.equals(cell.strip());
        return plain ? cell : "\"" + cell.replace("\"", "\"\"") + "\"";
    }
}
