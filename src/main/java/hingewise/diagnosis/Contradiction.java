package hingewise.diagnosis;

import hingewise.rulebook.Observation;
import java.util.List;

/**
 * Answers that cannot all be right: the same question, nothing changed between. All are kept and all weigh.
 *
 * @param readings in timeline order
 */
public record Contradiction(Observation observation, List<Reading> readings) {
    public Contradiction {
        readings = List.copyOf(readings);
    }
}
