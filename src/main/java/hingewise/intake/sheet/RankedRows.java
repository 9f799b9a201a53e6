package hingewise.intake.sheet;

import java.io.IOException;

/** Takes rows in the order of their rank. */
@FunctionalInterface
public interface RankedRows {
    /** @param rank from 1 */
    void add(long rank, RankedRow row) throws IOException;
}
