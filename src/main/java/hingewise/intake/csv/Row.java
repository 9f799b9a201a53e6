package hingewise.intake.csv;

import java.util.List;

/**
 * One row of a sheet.
 *
 * @param line where it begins, from 1
 * @param end the byte behind it, from the start of the file
 * @param endLine the line that begins there
 * @param cells as written, without quotes; empty if the row cannot be used
 * @param problem why it cannot, and what to do; blank if it can
 */
public record Row(long line, long end, long endLine, List<String> cells, String problem) {
    public Row {
        cells = List.copyOf(cells);
    }

    public boolean usable() {
        return problem.isEmpty();
    }
}
