package hingewise.intake.sheet;

/**
 * What became of a sheet.
 *
 * @param appraised rows, by this run and earlier ones
 * @param skipped rows, the same
 * @param thought how many different sets of claims this run had to think about
 * @param shrinkage how expectations were corrected
 */
public record Tally(long appraised, long skipped, long thought, Shrinkage shrinkage) {}
