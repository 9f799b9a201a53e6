package hingewise.terminal;

import hingewise.assessment.Assessment;
import hingewise.casefile.Report;
import hingewise.diagnosis.Contradiction;
import hingewise.diagnosis.Diagnosis;
import hingewise.diagnosis.RankedCause;
import hingewise.diagnosis.Reading;
import hingewise.diagnosis.Skipped;
import hingewise.report.EntryText;
import hingewise.rulebook.Moment;
import hingewise.rulebook.Observation;
import hingewise.rulebook.RuleBook;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What is odd about the record, and what it lacks. */
final class RecordSection {
    private static final int NAMED_AT_MOST = 6;
    private static final int NAMED_AFTER_REPAIR = 12;

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
            String said = c.readings().stream()
                    .map(r -> (r.yes() ? "yes" : "no") + " (" + source(r.entry()) + ")")
                    .collect(Collectors.joining(", then "));
            page.hanging(0, "-  ", c.observation().label() + ": " + said + meanwhile(c));
        }
        page.faint(0, "Nobody changed the phone between these answers; all of them are weighed. Times are in UTC.");
    }

    private static String source(Report report) {
        return report.kind().id() + ", " + report.by() + ", " + EntryText.time(report) + ", " + report.id();
    }

    private static String meanwhile(Contradiction contradiction) {
        return contradiction.meanwhile().isEmpty()
                ? ""
                : "; in between: "
                        + contradiction.meanwhile().stream()
                                .map(t -> t.label() + " (" + t.entry().id() + ")")
                                .collect(Collectors.joining(", "))
                        + ", so it may have changed by itself";
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

    /** The symptoms that were recorded first, then what bears most; the rest is counted. */
    static void sinceRepair(Page page, Assessment assessment) {
        List<Observation> left = assessment.notTestedSinceRepair();
        if (assessment.diagnosis().readings().sinceRepair().isEmpty()) {
            return;
        }
        page.heading("Not tested since the repair");
        if (left.isEmpty()) {
            page.line("Nothing: every recorded symptom and the whole round of functions have been looked at again.");
            return;
        }
        Set<String> recorded = assessment.diagnosis().readings().used().stream()
                .filter(Reading::yes)
                .map(r -> r.observation().id())
                .collect(Collectors.toSet());
        Map<String, Double> bearing = bearing(assessment.diagnosis());
        Map<Boolean, List<Observation>> parts = left.stream()
                .sorted(Comparator.comparing((Observation o) -> -bearing.getOrDefault(o.id(), 0.0)))
                .collect(Collectors.partitioningBy(o -> recorded.contains(o.id())));
        List<Observation> symptoms = parts.getOrDefault(true, List.of());
        List<Observation> round = parts.getOrDefault(false, List.of());
        if (symptoms.isEmpty()) {
            page.line("Every recorded symptom has been looked at again.");
        } else {
            page.hanging(2, "recorded symptoms    ", labels(symptoms.stream()));
        }
        if (!round.isEmpty()) {
            page.hanging(2, "round of functions   ", labels(round.stream().limit(NAMED_AFTER_REPAIR)));
        }
        page.faint(
                0,
                Figures.count(left.size(), "observation")
                        + " in all; \"hingewise observations --moment after-repair\" lists the round. What is not"
                        + " repeated is not tested.");
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
                        labels(group.stream().limit(NAMED_AT_MOST)));
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

    private static String labels(Stream<Observation> observations) {
        return observations.map(Observation::label).collect(Collectors.joining("; "));
    }

    private static Moment earliest(Observation observation) {
        return observation.moments().stream().sorted().findFirst().orElse(Moment.ARRIVAL);
    }

    private static String label(RuleBook rules, String observation) {
        Observation found = rules.observations().get(observation);
        return found == null ? observation : found.label();
    }
}
