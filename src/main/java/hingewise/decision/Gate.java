package hingewise.decision;

import java.util.List;

/**
 * Something to be opened once for all that lies behind it.
 *
 * @param parent the gate before it, or {@link #NONE}
 * @param cost of opening this gate alone
 * @param unopened whether what may only be done unopened is lost with it
 */
public record Gate(int parent, double cost, List<Harm> harms, boolean unopened) {
    /** No gate. */
    public static final int NONE = -1;

    public Gate {
        harms = List.copyOf(harms);
    }
}
