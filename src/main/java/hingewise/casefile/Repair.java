package hingewise.casefile;

import java.time.Instant;
import java.util.List;

/**
 * Parts that were fitted.
 *
 * @param parts ids of the parts
 * @param grade id of a grade: what kind of parts they are
 */
public record Repair(String id, Instant at, String by, List<String> parts, String grade, String remark)
        implements Entry {
    public Repair {
        parts = List.copyOf(parts);
    }
}
