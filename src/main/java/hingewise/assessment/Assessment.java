package hingewise.assessment;

import hingewise.casefile.CaseFile;
import hingewise.costing.PartsList;
import hingewise.diagnosis.Diagnosis;
import hingewise.planning.Plan;
import hingewise.planning.Step;
import hingewise.rulebook.Observation;
import java.util.List;

/**
 * Everything the program knows about a case.
 *
 * @param plan what to confirm or try first, and what to decide; only questions while a caution stops the work
 * @param parts what to order now, and what waits for a try; nothing while a caution stops the work
 * @param cautions those that stop the work first
 * @param untested observations that can be asked and have no answer, in the rule book's order
 * @param notTestedSinceRepair what the function round asks and nobody has looked at since the last repair; empty when
 *     nothing was repaired
 */
public record Assessment(
        CaseFile file,
        Diagnosis diagnosis,
        Plan plan,
        PartsList parts,
        List<ShownCaution> cautions,
        List<Observation> untested,
        List<Observation> notTestedSinceRepair) {
    public Assessment {
        cautions = List.copyOf(cautions);
        untested = List.copyOf(untested);
        notTestedSinceRepair = List.copyOf(notTestedSinceRepair);
    }

    /** What to confirm or try, best first. */
    public List<Step> tryFirst() {
        return plan.steps();
    }

    /** Whether a caution forbids going on. */
    public boolean stopped() {
        return cautions.stream().anyMatch(ShownCaution::stops);
    }
}
