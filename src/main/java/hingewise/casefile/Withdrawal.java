package hingewise.casefile;

import java.time.Instant;

/**
 * An earlier entry is taken back; the file keeps that it was.
 *
 * @param withdraws id of the entry
 */
public record Withdrawal(String id, Instant at, String by, String withdraws, String remark) implements Entry {}
