package hingewise.simulation;

import hingewise.casefile.CaseFile;
import hingewise.casefile.Entry;
import hingewise.costing.RepairCosts;
import hingewise.diagnosis.Diagnosis;
import hingewise.diagnosis.Diagnostician;
import hingewise.planning.Concern;
import hingewise.planning.Planning;
import hingewise.rulebook.RuleBook;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What a rule book makes of a case as far as it has got. The same entries are thought about once: many phones begin alike.
 */
final class Knowledge {
    private final RuleBook rules;
    private final RepairCosts costs;
    private final Concern concern;
    private final Diagnostician diagnostician;
    private final Map<List<Entry>, Diagnosis> diagnoses = new HashMap<>();
    private final Map<List<Entry>, Planning.Next> plans = new HashMap<>();

    Knowledge(RuleBook rules, RepairCosts costs, Concern concern) {
        this.rules = rules;
        this.costs = costs;
        this.concern = concern;
        this.diagnostician = new Diagnostician(rules);
    }

    Diagnosis of(CaseFile file) {
        return diagnoses.computeIfAbsent(file.entries(), e -> diagnostician.chances(file));
    }

    /** What the planner that users have says to do next. */
    Planning.Next next(CaseFile file) {
        return plans.computeIfAbsent(file.entries(), e -> new Planning(rules, costs, of(file), concern).next());
    }
}
