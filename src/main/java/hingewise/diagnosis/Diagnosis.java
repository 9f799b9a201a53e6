package hingewise.diagnosis;

import hingewise.inference.Evidence;
import hingewise.inference.Outlook;
import hingewise.inference.Solution;
import hingewise.inference.Solver;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What is probably wrong.
 *
 * @param causes every cause of the family, likeliest first
 * @param combinations the likeliest sets of the causes that are likely enough to matter, likeliest first
 * @param histories chance of each history by id, in the rule book's order
 * @param readings the evidence used and left out
 * @param solver holds the network that was solved
 * @param evidence what was known of that network
 * @param solution its solution
 */
public record Diagnosis(
        List<RankedCause> causes,
        List<LikelySet> combinations,
        Map<String, Double> histories,
        Readings readings,
        Solver solver,
        Evidence evidence,
        Solution solution) {
    public Diagnosis {
        causes = List.copyOf(causes);
        combinations = List.copyOf(combinations);
    }

    /** Chance of a cause by id, in 0–1; 0 for a cause the family cannot have. */
    public double chanceOf(String cause) {
        return causes.stream()
                .filter(c -> c.cause().id().equals(cause))
                .mapToDouble(RankedCause::probability)
                .findFirst()
                .orElse(0);
    }

    /** Chance that at least one of these causes is there, in 0–1. */
    public double chanceOfAny(Collection<String> anyOf) {
        return chanceOfAny(anyOf, List.of());
    }

    /** Chance that at least one of these causes is there or one of these histories happened, in 0–1. */
    public double chanceOfAny(Collection<String> anyCause, Collection<String> anyHistory) {
        Evidence none = evidence;
        for (String cause : anyCause) {
            none = none.no(Names.cause(cause));
        }
        for (String history : anyHistory) {
            none = none.no(Names.history(history));
        }
        return -Math.expm1(solver.logEvidence(none) - solution.logEvidence());
    }

    /** Chance of each cause by id if this one is there. */
    public Map<String, Double> givenCause(String cause) {
        return byCause(solver.solve(evidence.yes(Names.cause(cause))).probabilities());
    }

    /** What an observation would say if it were made now and surely: its chance, and the causes' chances either way. */
    public CauseOutlook outlook(String observation) {
        String name = Names.observation(observation);
        if (evidence.findings().containsKey(name)) {
            return new CauseOutlook(
                    solution.probability(name),
                    byCause(solver.solve(evidence.yes(name)).probabilities()),
                    byCause(solver.solve(evidence.no(name)).probabilities()));
        }
        Outlook outlook = solution.outlook(name);
        return new CauseOutlook(outlook.yes(), byCause(outlook.ifYes()), byCause(outlook.ifNo()));
    }

    /** Phones as this one may be, drawn from all that is known of it; the same for the same case and seed. */
    public PossiblePhones possiblePhones(int count, long seed) {
        return new PossiblePhones(this, count, seed);
    }

    private Map<String, Double> byCause(Map<String, Double> byName) {
        Map<String, Double> byCause = new LinkedHashMap<>();
        causes.forEach(c -> byCause.put(
                c.cause().id(), byName.getOrDefault(Names.cause(c.cause().id()), 0.0)));
        return byCause;
    }
}
