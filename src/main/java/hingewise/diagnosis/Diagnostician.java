package hingewise.diagnosis;

import hingewise.casefile.CaseFile;
import hingewise.inference.Evidence;
import hingewise.inference.Network;
import hingewise.inference.Solution;
import hingewise.inference.Solver;
import hingewise.rulebook.Cause;
import hingewise.rulebook.RuleBook;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Finds what is probably wrong with a phone. */
public final class Diagnostician {
    private static final int COMBINATIONS = 5;

    private final RuleBook rules;

    public Diagnostician(RuleBook rules) {
        this.rules = rules;
    }

    /**
     * @throws CaseException if the case names something the rule book lacks
     * @throws hingewise.inference.CliqueLimitException if the evidence couples too much to be solved exactly
     */
    public Diagnosis diagnose(CaseFile file) {
        Readings readings = Readings.of(rules, file);
        String family = file.phone().family();
        List<Cause> causes = rules.causesOf(family);
        Network network = RuleNetwork.of(rules, family);
        Set<String> observed = readings.used().stream()
                .map(r -> Names.observation(r.observation().id()))
                .collect(Collectors.toCollection(LinkedHashSet::new));
        Set<String> wanted = new LinkedHashSet<>();
        rules.histories().keySet().forEach(h -> wanted.add(Names.history(h)));
        causes.forEach(c -> wanted.add(Names.cause(c.id())));

        // Causes may be set as well: planning asks what follows if one is there or none of several is.
        observed.addAll(wanted);
        Solver solver = Solver.of(network, observed, wanted);
        Evidence evidence = Reasons.evidence(readings.used());
        Solution solution = solver.solve(evidence);
        return new Diagnosis(
                ranked(causes, solver, readings, solution),
                combinations(causes, solution),
                histories(solution),
                readings,
                solver,
                evidence,
                solution);
    }

    private List<RankedCause> ranked(List<Cause> causes, Solver solver, Readings readings, Solution solution) {
        Map<String, List<Reason>> reasons = new Reasons(solver, readings.used()).of(causes);
        Solution prior = solver.solve(Evidence.none());
        return causes.stream()
                .map(cause -> {
                    double chance = solution.probability(Names.cause(cause.id()));
                    return new RankedCause(
                            cause,
                            prior.probability(Names.cause(cause.id())),
                            chance,
                            rules.words().of(chance),
                            reasons.getOrDefault(cause.id(), List.of()));
                })
                .sorted(Comparator.comparingDouble(RankedCause::probability)
                        .reversed()
                        .thenComparing(r -> r.cause().id()))
                .toList();
    }

    private static List<LikelySet> combinations(List<Cause> causes, Solution solution) {
        Set<String> names =
                causes.stream().map(c -> Names.cause(c.id())).collect(Collectors.toCollection(LinkedHashSet::new));
        return solution.mostProbable(names, COMBINATIONS).stream()
                .map(c -> new LikelySet(
                        c.yes().stream().map(Names::id).collect(Collectors.toCollection(LinkedHashSet::new)),
                        c.probability()))
                .toList();
    }

    private Map<String, Double> histories(Solution solution) {
        Map<String, Double> chances = new LinkedHashMap<>();
        rules.histories().keySet().forEach(h -> chances.put(h, solution.probability(Names.history(h))));
        return chances;
    }
}
