package hingewise.diagnosis;

import hingewise.casefile.CaseFile;
import hingewise.casefile.Entry;
import hingewise.casefile.Report;
import hingewise.rulebook.Choice;
import hingewise.rulebook.NearestId;
import hingewise.rulebook.Question;
import hingewise.rulebook.RuleBook;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * The entries of a case, read with the rule book in hand.
 *
 * @param used what counts as evidence, in timeline order
 * @param skipped what could not have been observed in the recorded state, and why
 * @param unsure observations that were looked at without an answer
 */
public record Readings(List<Reading> used, List<Skipped> skipped, Set<String> unsure) {
    public Readings {
        used = List.copyOf(used);
        skipped = List.copyOf(skipped);
        unsure = Set.copyOf(unsure);
    }

    /** @throws CaseException if the case names a family, observation, choice or answer that the rule book lacks */
    public static Readings of(RuleBook rules, CaseFile file) {
        List<String> problems = new ArrayList<>();
        String family = file.phone().family();
        if (!rules.families().containsKey(family)) {
            throw new CaseException(List.of("\"" + family + "\" is not a family of the rule book. "
                    + NearestId.advice(family, rules.families().keySet())));
        }
        List<Reading> all = new ArrayList<>();
        Set<String> unsure = new TreeSet<>();
        for (Entry entry : file.entries()) {
            if (entry instanceof Report report) {
                read(rules, family, report, all, unsure, problems);
            }
        }
        if (!problems.isEmpty()) {
            throw new CaseException(problems);
        }
        return sift(all, unsure);
    }

    private static void read(
            RuleBook rules,
            String family,
            Report report,
            List<Reading> readings,
            Set<String> unsure,
            List<String> problems) {
        Optional<Question> found = rules.question(report.about());
        if (found.isEmpty()) {
            Set<String> known = new TreeSet<>(rules.observations().keySet());
            known.addAll(rules.choices().keySet());
            problems.add("entry " + report.id() + ": \"" + report.about() + "\" is not an observation. "
                    + NearestId.advice(report.about(), known));
            return;
        }
        Question question = found.get();
        Choice.Answer chosen = question.answers().get(report.answer());
        if (!question.families().contains(family)) {
            problems.add("entry " + report.id() + ": \"" + report.about() + "\" is not asked of a " + family
                    + ". Remove the entry or correct the family.");
        } else if (report.answer().equals(Report.CANT_TELL)) {
            question.answers().values().forEach(a -> unsure.addAll(a.settles().keySet()));
        } else if (chosen == null) {
            problems.add("entry " + report.id() + ": \"" + report.answer() + "\" does not answer \"" + question.id()
                    + "\". Use " + String.join(", ", question.answers().keySet()) + " or " + Report.CANT_TELL + ".");
        } else {
            chosen.settles()
                    .forEach((id, yes) -> Optional.ofNullable(
                                    rules.observations().get(id))
                            .filter(o -> o.families().contains(family))
                            .ifPresent(o -> readings.add(new Reading(report, o, yes))));
        }
    }

    /** Leaves out what could not have been observed, judged by the latest recorded answers. */
    private static Readings sift(List<Reading> all, Set<String> unsure) {
        Map<String, Boolean> latest = latest(all);
        List<Reading> used = new ArrayList<>();
        List<Skipped> skipped = new ArrayList<>();
        for (Reading reading : all) {
            Optional<Map.Entry<String, Boolean>> obstacle = reading.observation().needs().entrySet().stream()
                    .filter(n -> !n.getValue().equals(latest.getOrDefault(n.getKey(), n.getValue())))
                    .min(Map.Entry.comparingByKey());
            if (obstacle.isEmpty()) {
                used.add(reading);
            } else {
                skipped.add(new Skipped(
                        reading.entry().id(),
                        reading.observation().id(),
                        "could not be observed: \"" + obstacle.get().getKey() + "\" is recorded as "
                                + (obstacle.get().getValue() ? Question.NO : Question.YES)));
            }
        }
        return new Readings(used, skipped, unsure);
    }

    /** The last answer recorded for each observation. */
    public Map<String, Boolean> latest() {
        return latest(used);
    }

    private static Map<String, Boolean> latest(List<Reading> readings) {
        Map<String, Boolean> latest = new HashMap<>();
        readings.forEach(r -> latest.put(r.observation().id(), r.yes()));
        return latest;
    }
}
