package hingewise.casefile;

import java.time.Instant;

/**
 * Time in which the phone may have changed by itself.
 *
 * @param what id of a declared way to change: in transit, stored wet, in use
 */
public record Meanwhile(String id, Instant at, String by, String what, String remark) implements Entry {}
