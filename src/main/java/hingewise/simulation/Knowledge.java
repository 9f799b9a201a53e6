package hingewise.simulation;

import hingewise.casefile.CaseFile;
import hingewise.casefile.Entry;
import hingewise.costing.RepairCosts;
import hingewise.costing.Terms;
import hingewise.diagnosis.Diagnosis;
import hingewise.diagnosis.Diagnostician;
import hingewise.diagnosis.RankedCause;
import hingewise.inference.CliqueLimitException;
import hingewise.planning.Concern;
import hingewise.planning.Planning;
import hingewise.rulebook.RuleBook;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * What a rule book makes of a case as far as it has got. The same entries are thought about once: many phones begin alike.
 */
final class Knowledge {
    private static final int KEPT = 16;

    private final RuleBook rules;
    private final RepairCosts costs;
    private final Concern concern;
    private final Diagnostician diagnostician;
    private final Map<List<Entry>, Map<String, Double>> chances = new HashMap<>();
    private final Map<Asked, Double> ofAny = new HashMap<>();
    private final Map<List<Entry>, Planning.Next> plans = new HashMap<>();
    /** What hangs together too much to be reckoned: finding that out takes longer than most answers. */
    private final Map<List<Entry>, CliqueLimitException> refused = new HashMap<>();
    /** The last few alone: each holds large tables. */
    private final Map<List<Entry>, Diagnosis> diagnoses = new LinkedHashMap<>() {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<List<Entry>, Diagnosis> eldest) {
            return size() > KEPT;
        }
    };

    private record Asked(List<Entry> entries, List<String> causes) {}

    Knowledge(RuleBook rules, RepairCosts costs, Concern concern) {
        this.rules = rules;
        this.costs = costs;
        this.concern = concern;
        this.diagnostician = new Diagnostician(rules);
    }

    private Diagnosis of(CaseFile file) {
        CliqueLimitException before = refused.get(file.entries());
        if (before != null) {
            throw before;
        }
        try {
            return diagnoses.computeIfAbsent(file.entries(), e -> diagnostician.chances(file));
        } catch (CliqueLimitException e) {
            refused.put(file.entries(), e);
            throw e;
        }
    }

    /** Chance of each cause by id, in 0–1. */
    Map<String, Double> chances(CaseFile file) {
        return chances.computeIfAbsent(
                file.entries(),
                e -> of(file).causes().stream()
                        .collect(Collectors.toMap(r -> r.cause().id(), RankedCause::probability)));
    }

    /** The chance that any of some causes is there, by their ids, in 0–1. */
    double anyOf(CaseFile file, List<String> causes) {
        return causes.isEmpty()
                ? 0
                : ofAny.computeIfAbsent(new Asked(file.entries(), causes), a -> of(file).chanceOfAny(causes));
    }

    /** What the planner that users have says to do next. */
    Planning.Next next(CaseFile file) {
        return plans.computeIfAbsent(
                file.entries(), e -> new Planning(rules, costs, of(file), Terms.UNKNOWN, c -> true, concern).next());
    }
}
