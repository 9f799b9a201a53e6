package hingewise.rulebook;

import java.util.List;

/**
 * A fault of a component. Several causes may be true at once.
 *
 * @param component id of what is at fault; a family without it cannot have the cause
 * @param baseRate chance with none of the listed histories, in 1e-5–.5
 * @param raisedBy histories that bring it about
 * @param signs observations it shows
 */
public record Cause(
        String id,
        String label,
        String component,
        ByFamily baseRate,
        List<Raise> raisedBy,
        List<Sign> signs,
        Grounds grounds) {
    public Cause {
        raisedBy = List.copyOf(raisedBy);
        signs = List.copyOf(signs);
    }
}
