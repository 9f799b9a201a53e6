package hingewise.intake.sheet;

import java.io.IOException;

/** Where ranked rows go. */
@FunctionalInterface
public interface Destination {
    /** What takes them, once it is known what the sheet looks like. */
    RankedRows begin(Columns columns, Tally tally) throws IOException;
}
