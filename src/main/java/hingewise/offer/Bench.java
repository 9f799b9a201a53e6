package hingewise.offer;

import hingewise.casefile.Opened;
import hingewise.diagnosis.Diagnosis;
import java.util.Set;

/**
 * How far work on a phone has gone.
 *
 * @param ways what may be the matter with it by then
 * @param open ids of the access states that are open
 * @param opened whether it was ever opened here
 * @param tried ids of the confirmations that were tried
 */
record Bench(Ways ways, Set<String> open, boolean opened, Set<String> tried) {
    Bench {
        open = Set.copyOf(open);
        tried = Set.copyOf(tried);
    }

    /** As far as its case has gone. */
    static Bench of(Diagnosis diagnosis, Ways ways) {
        Set<String> open = diagnosis.readings().open();
        boolean opened = diagnosis.readings().happenings().stream()
                .anyMatch(h -> h.entry() instanceof Opened || h.entry() instanceof hingewise.casefile.Repair);
        return new Bench(
                ways, open, opened || !open.isEmpty(), diagnosis.readings().tried());
    }
}
