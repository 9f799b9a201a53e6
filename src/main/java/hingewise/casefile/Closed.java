package hingewise.casefile;

import java.time.Instant;

/** The phone was closed again. */
public record Closed(String id, Instant at, String by, String remark) implements Entry {}
