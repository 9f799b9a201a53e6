package hingewise.casefile;

import java.time.Instant;

/**
 * The phone was opened as far as this state.
 *
 * @param access id of an access state
 */
public record Opened(String id, Instant at, String by, String access, String remark) implements Entry {}
