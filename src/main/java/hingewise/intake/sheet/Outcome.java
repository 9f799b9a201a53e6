package hingewise.intake.sheet;

import java.util.List;
import org.joda.money.Money;

/** What became of one row. */
public sealed interface Outcome {
    /** Where the row begins, from 1. */
    long line();

    /** Where reading goes on behind it. */
    Place next();

    /**
     * A place in a sheet.
     *
     * @param at the byte, from the start of the file
     * @param line the line that begins there, from 1
     */
    record Place(long at, long line) {}

    /**
     * The row was appraised.
     *
     * @param cells as it was written
     */
    record Appraised(long line, Place next, List<String> cells, Money price, Appraisal appraisal) implements Outcome {
        public Appraised {
            cells = List.copyOf(cells);
        }
    }

    /**
     * The row was passed over.
     *
     * @param problem why, and what to do
     */
    record Skipped(long line, Place next, String problem) implements Outcome {}
}
