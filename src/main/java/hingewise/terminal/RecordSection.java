package hingewise.terminal;

import hingewise.assessment.Assessment;
import hingewise.diagnosis.Contradiction;
import hingewise.diagnosis.Diagnosis;
import hingewise.diagnosis.RankedCause;
import hingewise.diagnosis.Skipped;
import hingewise.rulebook.Moment;
import hingewise.rulebook.Observation;
import hingewise.rulebook.RuleBook;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** What is odd about the record, and what it lacks. */
final class RecordSection {
    private static final int NAMED_AT_MOST = 6;

    private static final Map<Moment, String> WHEN = Map.of(
            Moment.LISTING, "from afar",
            Moment.ARRIVAL, "on the desk",
            Moment.OPENED, "with something open",
            Moment.AFTER_REPAIR, "after the repair");

    private RecordSection() {}

    static void contradictions(Page page, Diagnosis diagnosis) {
        List<Contradiction> all = diagnosis.readings().contradictions();
        if (all.isEmpty()) {
            return;
        }
        page.heading("Told differently");
        for (Contradiction c : all) {
            page.hanging(
                    0,
                    "-  ",
                    c.observation().label() + ": "
                            + c.readings().stream()
                                    .map(r -> (r.yes() ? "yes" : "no") + " ("
                                            + r.entry().kind().id() + ", "
                                            + r.entry().by() + ")")
                                    .collect(Collectors.joining(", then ")));
        }
    }

    static void skipped(Page page, RuleBook rules, Diagnosis diagnosis) {
        List<Skipped> all = diagnosis.readings().skipped();
        if (all.isEmpty()) {
            return;
        }
        page.heading("Left out of the reckoning");
        for (Skipped s : all) {
            page.hanging(0, "-  ", label(rules, s.observation()) + " (entry " + s.entry() + "): " + s.why());
        }
    }

    /** Names what bears most on what is still open; the rest is counted. */
    static void untested(Page page, Assessment assessment) {
        Map<String, Double> bearing = bearing(assessment.diagnosis());
        Map<Moment, List<Observation>> groups = assessment.untested().stream()
                .filter(o -> bearing.containsKey(o.id()))
                .sorted(Comparator.comparing((Observation o) -> -bearing.getOrDefault(o.id(), 0.0)))
                .collect(Collectors.groupingBy(RecordSection::earliest));
        page.heading("Not tested yet");
        if (!groups.isEmpty()) {
            page.line("What would bear most on the likelier causes:");
        }
        for (Moment moment : Moment.values()) {
            List<Observation> group = groups.getOrDefault(moment, List.of());
            if (!group.isEmpty()) {
                page.hanging(
                        2,
                        String.format("%-21s", WHEN.get(moment)),
                        group.stream()
                                .limit(NAMED_AT_MOST)
                                .map(Observation::label)
                                .collect(Collectors.joining("; ")));
            }
        }
        page.faint(
                0,
                Figures.count(assessment.untested().size(), "observation")
                        + " untested in all; \"hingewise observations\" lists what can be asked.");
    }

    /** How far the signs of undecided causes could move them: strength times p(1 − p), the most over the causes. */
    private static Map<String, Double> bearing(Diagnosis diagnosis) {
        Map<String, Double> bearing = new HashMap<>();
        for (RankedCause ranked : diagnosis.causes()) {
            double open = ranked.probability() * (1 - ranked.probability());
            ranked.cause().signs().forEach(s -> bearing.merge(s.observation(), s.strength() * open, Math::max));
        }
        return bearing;
    }

    private static Moment earliest(Observation observation) {
        return observation.moments().stream().sorted().findFirst().orElse(Moment.ARRIVAL);
    }

    private static String label(RuleBook rules, String observation) {
        Observation found = rules.observations().get(observation);
        return found == null ? observation : found.label();
    }
}
