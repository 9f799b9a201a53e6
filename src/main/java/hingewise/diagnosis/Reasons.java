package hingewise.diagnosis;

import hingewise.casefile.Entry;
import hingewise.casefile.Meanwhile;
import hingewise.casefile.Opened;
import hingewise.casefile.Repair;
import hingewise.inference.Solution;
import hingewise.rulebook.Cause;
import hingewise.rulebook.Sign;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Why a chance is what it is. The log-odds change of a cause is telescoped over the entries in timeline order and in
 * its reverse, and averaged: each telescope sums exactly to the whole change, hence so does the mean. How the change is
 * split is a convention; the chance without an entry, shown beside it, is not.
 */
final class Reasons {
    private static final double MOST_LOG_ODDS = 700;

    private final List<Happening> happenings;
    private final List<Entry> entries;
    private final List<Cause> causes;
    private final List<Chances> first = new ArrayList<>();
    private final List<Chances> last = new ArrayList<>();
    private final List<Chances> without = new ArrayList<>();

    /**
     * What is kept of a solution. The solution itself holds large tables, and there are three to an entry.
     *
     * @param of chance of each cause by id
     * @param logOdds the same as log-odds
     */
    private record Chances(Map<String, Double> of, Map<String, Double> logOdds) {}

    Reasons(Situations situations, List<Happening> happenings, List<Cause> causes) {
        this.causes = causes;
        this.happenings = happenings.stream()
                .filter(h -> !(h instanceof Touch touch) || !touch.turns().isEmpty())
                .toList();
        this.entries = this.happenings.stream().map(Happening::entry).distinct().toList();
        int n = entries.size();
        for (int k = 0; k <= n; k++) {
            first.add(chances(situations.solve(entries.subList(0, k))));
            last.add(chances(situations.solve(entries.subList(n - k, n))));
        }
        for (Entry entry : entries) {
            without.add(chances(
                    situations.solve(entries.stream().filter(e -> e != entry).toList())));
        }
    }

    private Chances chances(Solution solution) {
        Map<String, Double> chance = new HashMap<>();
        Map<String, Double> logOdds = new HashMap<>();
        for (Cause cause : causes) {
            String name = Names.cause(cause.id());
            chance.put(cause.id(), solution.probability(name));
            // Bounded, so that what is certain beyond all a double can tell still sums.
            logOdds.put(cause.id(), Math.max(-MOST_LOG_ODDS, Math.min(MOST_LOG_ODDS, solution.logOdds(name))));
        }
        return new Chances(chance, logOdds);
    }

    /** The reasons of each cause, in timeline order. */
    Map<String, List<Reason>> byCause() {
        int n = entries.size();
        Map<String, List<Reason>> reasons = new LinkedHashMap<>();
        for (Cause cause : causes) {
            List<Reason> own = new ArrayList<>();
            for (int k = 0; k < n; k++) {
                double forward =
                        of(first.get(k + 1).logOdds(), cause) - of(first.get(k).logOdds(), cause);
                double backward = of(last.get(n - k).logOdds(), cause)
                        - of(last.get(n - k - 1).logOdds(), cause);
                own.add(new Reason(
                        entries.get(k).id(),
                        text(cause, entries.get(k)),
                        (forward + backward) / 2,
                        of(without.get(k).of(), cause)));
            }
            reasons.put(cause.id(), own);
        }
        return reasons;
    }

    private static double of(Map<String, Double> figures, Cause cause) {
        return Objects.requireNonNull(figures.get(cause.id()));
    }

    private String text(Cause cause, Entry entry) {
        List<Reading> readings = happenings.stream()
                .filter(h -> h.entry() == entry)
                .flatMap(h -> h instanceof Reading r ? Stream.of(r) : Stream.empty())
                .toList();
        String done = happenings.stream()
                .filter(h -> h.entry() == entry)
                .flatMap(h -> h instanceof Touch t ? Stream.of(deed(t)) : Stream.empty())
                .distinct()
                .collect(Collectors.joining(" "));
        if (readings.isEmpty()) {
            return done;
        }
        String said = readings.stream().map(Reading::statement).distinct().collect(Collectors.joining(" "));
        Set<String> seen = readings.stream().map(r -> r.observation().id()).collect(Collectors.toSet());
        Optional<String> because = cause.signs().stream()
                .filter(s -> seen.contains(s.observation()))
                .map(Sign::because)
                .flatMap(Optional::stream)
                .findFirst();
        return said + " (" + readings.get(0).entry().kind().id() + ")"
                + because.map(b -> " " + b).orElse("");
    }

    private static String deed(Touch touch) {
        String what = touch.label() + ".";
        if (touch.entry() instanceof Opened) {
            return "Opened: " + what;
        } else if (touch.entry() instanceof Repair) {
            return "Fitted: " + what;
        } else if (touch.entry() instanceof Meanwhile) {
            return "Time passed: " + what;
        }
        return "Tried: " + what;
    }
}
