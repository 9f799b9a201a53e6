package hingewise.diagnosis;

import hingewise.casefile.Report;
import hingewise.inference.Evidence;
import hingewise.inference.Solution;
import hingewise.inference.Solver;
import hingewise.rulebook.Cause;
import hingewise.rulebook.Sign;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Why a chance is what it is. The log-odds change of a cause is telescoped over the entries in timeline order and in
 * its reverse, and averaged: each telescope sums exactly to the whole change, hence so does the mean. How the change is
 * split is a convention; the chance without an entry, shown beside it, is not.
 */
final class Reasons {
    private final Solver solver;
    private final List<Reading> readings;
    private final List<Report> entries;

    Reasons(Solver solver, List<Reading> readings) {
        this.solver = solver;
        this.readings = readings;
        this.entries = readings.stream().map(Reading::entry).distinct().toList();
    }

    /** The reasons of each cause, in timeline order. */
    Map<String, List<Reason>> of(List<Cause> causes) {
        int n = entries.size();
        List<Solution> first = new ArrayList<>();
        List<Solution> last = new ArrayList<>();
        List<Solution> without = new ArrayList<>();
        for (int k = 0; k <= n; k++) {
            first.add(solve(entries.subList(0, k)));
            last.add(solve(entries.subList(n - k, n)));
        }
        for (Report entry : entries) {
            without.add(solve(entries.stream().filter(e -> e != entry).toList()));
        }
        Map<String, List<Reason>> reasons = new LinkedHashMap<>();
        for (Cause cause : causes) {
            String name = Names.cause(cause.id());
            List<Reason> own = new ArrayList<>();
            for (int k = 0; k < n; k++) {
                double forward = logit(first.get(k + 1), name) - logit(first.get(k), name);
                double backward = logit(last.get(n - k), name) - logit(last.get(n - k - 1), name);
                own.add(new Reason(
                        entries.get(k).id(),
                        text(cause, entries.get(k)),
                        (forward + backward) / 2,
                        without.get(k).probability(name)));
            }
            reasons.put(cause.id(), own);
        }
        return reasons;
    }

    private Solution solve(List<Report> some) {
        return solver.solve(
                evidence(readings.stream().filter(r -> some.contains(r.entry())).toList()));
    }

    /** The reports as weighted evidence on the network. */
    static Evidence evidence(List<Reading> readings) {
        Evidence evidence = Evidence.none();
        for (Map.Entry<String, hingewise.inference.Weighted> e :
                Likelihoods.of(readings).entrySet()) {
            evidence = evidence.weighted(
                    Names.observation(e.getKey()),
                    e.getValue().ifYes(),
                    e.getValue().ifNo());
        }
        return evidence;
    }

    private static double logit(Solution solution, String name) {
        double p = solution.probability(name);
        return Math.log(p) - Math.log1p(-p);
    }

    private String text(Cause cause, Report entry) {
        List<Reading> own = readings.stream().filter(r -> r.entry() == entry).toList();
        String said = own.stream().map(Reading::statement).distinct().collect(Collectors.joining(" "));
        Set<String> seen = own.stream().map(r -> r.observation().id()).collect(Collectors.toSet());
        Optional<String> because = cause.signs().stream()
                .filter(s -> seen.contains(s.observation()))
                .map(Sign::because)
                .flatMap(Optional::stream)
                .findFirst();
        return said + " (" + entry.kind().id() + ")"
                + because.map(b -> ". " + b).orElse("");
    }
}
