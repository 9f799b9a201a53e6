package hingewise.casefile;

import java.time.Instant;

/**
 * A confirmation that was carried out and may have changed the phone. Its result is a {@link Report} of its own.
 *
 * @param confirmation id of a confirmation
 */
public record Try(String id, Instant at, String by, String confirmation, String remark) implements Entry {}
