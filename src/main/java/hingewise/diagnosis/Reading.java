package hingewise.diagnosis;

import hingewise.casefile.Report;
import hingewise.rulebook.Observation;

/**
 * What one entry says of one observation.
 *
 * @param entry the entry it comes from
 * @param yes whether the observation was reported as so
 */
public record Reading(Report entry, Observation observation, boolean yes) implements Happening {
    /** A plain statement of what was reported. */
    public String statement() {
        return yes ? observation.whenYes() : observation.whenNo();
    }
}
