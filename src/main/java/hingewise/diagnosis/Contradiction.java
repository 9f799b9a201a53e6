package hingewise.diagnosis;

import hingewise.rulebook.Observation;
import java.util.List;

/**
 * Answers to the same question that cannot all be right, unless the phone changed by itself between them; nobody changed
 * it. All are kept and all weigh.
 *
 * @param readings in timeline order
 * @param meanwhile what may have changed the observation by itself between the first answer and the last; empty if
 *     nothing did, and then one of the answers is wrong
 */
public record Contradiction(Observation observation, List<Reading> readings, List<Touch> meanwhile) {
    public Contradiction {
        readings = List.copyOf(readings);
        meanwhile = List.copyOf(meanwhile);
    }
}
