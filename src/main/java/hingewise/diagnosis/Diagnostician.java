package hingewise.diagnosis;

import hingewise.casefile.CaseFile;
import hingewise.inference.Evidence;
import hingewise.inference.Solution;
import hingewise.inference.Solver;
import hingewise.rulebook.Cause;
import hingewise.rulebook.Raise;
import hingewise.rulebook.RuleBook;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Finds what is probably wrong with a phone. */
public final class Diagnostician {
    private static final int COMBINATIONS = 5;
    /** Combinations are told of causes at least this likely: over all causes together each would be one in thousands. */
    private static final double COMBINED_FROM = .1;

    private static final int COMBINED_AT_MOST = 6;

    private final RuleBook rules;

    public Diagnostician(RuleBook rules) {
        this.rules = rules;
    }

    /**
     * @throws CaseException if the case names something the rule book lacks
     * @throws hingewise.inference.CliqueLimitException if the evidence couples too much to be solved exactly
     */
    public Diagnosis diagnose(CaseFile file) {
        return diagnose(file, true);
    }

    /**
     * The same without reasons and combinations, which take most of the time.
     *
     * @throws CaseException if the case names something the rule book lacks
     * @throws hingewise.inference.CliqueLimitException if the evidence couples too much to be solved exactly
     */
    public Diagnosis chances(CaseFile file) {
        return diagnose(file, false);
    }

    private Diagnosis diagnose(CaseFile file, boolean explained) {
        RuleBook own = rules.of(file.phone().family());
        if (own != rules) {
            return new Diagnostician(own).diagnose(file, explained);
        }
        Readings readings = Readings.of(rules, file);
        String family = file.phone().family();
        List<Cause> causes = rules.causesOf(family);
        Situations situations = new Situations(rules, family, readings.happenings());
        Situations.Situation whole = situations.whole();
        Evidence evidence = situations.evidence(whole, file.entries());
        Solution solution = whole.solver().solve(evidence);
        Map<String, List<Reason>> reasons =
                explained ? new Reasons(situations, readings.happenings(), causes).byCause() : Map.of();
        List<RankedCause> ranked = ranked(causes, family, reasons, solution);
        return new Diagnosis(
                ranked,
                explained ? combinations(ranked, solution) : List.of(),
                histories(solution),
                readings,
                whole.solver(),
                evidence,
                solution);
    }

    /**
     * The network of a case made ready and not yet solved: how entangled it is can be asked in a fraction of the time.
     *
     * @throws CaseException if the case names something the rule book lacks
     * @throws hingewise.inference.CliqueLimitException if the evidence couples too much to be solved exactly
     */
    public Solver prepare(CaseFile file) {
        RuleBook own = rules.of(file.phone().family());
        if (own != rules) {
            return new Diagnostician(own).prepare(file);
        }
        Readings readings = Readings.of(rules, file);
        return new Situations(rules, file.phone().family(), readings.happenings())
                .whole()
                .solver();
    }

    private List<RankedCause> ranked(
            List<Cause> causes, String family, Map<String, List<Reason>> reasons, Solution solution) {
        return causes.stream()
                .map(cause -> {
                    double chance = solution.probability(Names.cause(cause.id()));
                    return new RankedCause(
                            cause,
                            prior(cause, family),
                            chance,
                            rules.words().of(chance),
                            reasons.getOrDefault(cause.id(), List.of()));
                })
                .sorted(Comparator.comparingDouble(RankedCause::probability)
                        .reversed()
                        .thenComparing(r -> r.cause().id()))
                .toList();
    }

    /** The chance before any entry: histories happen independently, and each raises a cause by itself. */
    private double prior(Cause cause, String family) {
        double absent = 1 - cause.baseRate().in(family);
        for (Raise raise : cause.raisedBy()) {
            double happened = Optional.ofNullable(rules.histories().get(raise.history()))
                    .map(h -> h.rate().in(family))
                    .orElse(0.0);
            absent *= 1 - raise.strength() * happened;
        }
        return 1 - absent;
    }

    private static List<LikelySet> combinations(List<RankedCause> ranked, Solution solution) {
        Set<String> names = ranked.stream()
                .filter(r -> r.probability() >= COMBINED_FROM)
                .limit(COMBINED_AT_MOST)
                .map(r -> Names.cause(r.cause().id()))
                .collect(Collectors.toCollection(LinkedHashSet::new));
        if (names.isEmpty()) {
            return List.of();
        }
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
