package hingewise.casefile;

import java.time.Instant;

/** One line of a case's timeline. */
public sealed interface Entry permits Report, Try, Repair, Opened, Closed, Meanwhile, Price, Withdrawal {
    /** Unique within the case. */
    String id();

    /** When it was recorded. */
    Instant at();

    /** Who says so. */
    String by();

    /** A free remark; may be blank. */
    String remark();
}
