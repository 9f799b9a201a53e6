package hingewise.intake.sheet;

import hingewise.intake.csv.Survey;

/** Is told how far a sheet has got, always by the same thread. */
public interface Watcher {
    /**
     * Reading begins.
     *
     * @param before rows that an earlier run has done
     */
    void begins(Survey survey, Columns columns, long before);

    /**
     * A row was passed over.
     *
     * @param line where it begins, from 1
     * @param problem why, and what to do
     */
    void skipped(long line, String problem);

    /**
     * Some rows more are done.
     *
     * @param bytes of the sheet that are done, by this run and earlier ones
     * @param rows that this run has done
     */
    void progress(long bytes, long rows);

    /** All rows are appraised; they are put in order now. */
    void ranks(Tally tally);
}
