package hingewise.diagnosis;

import hingewise.casefile.CaseFile;
import hingewise.casefile.Closed;
import hingewise.casefile.Entry;
import hingewise.casefile.Meanwhile;
import hingewise.casefile.Opened;
import hingewise.casefile.Repair;
import hingewise.casefile.Report;
import hingewise.casefile.Try;
import hingewise.plain.Quoted;
import hingewise.rulebook.Access;
import hingewise.rulebook.Choice;
import hingewise.rulebook.Confirmation;
import hingewise.rulebook.EvidenceKind;
import hingewise.rulebook.Grade;
import hingewise.rulebook.Lapse;
import hingewise.rulebook.NearestId;
import hingewise.rulebook.Observation;
import hingewise.rulebook.Part;
import hingewise.rulebook.Question;
import hingewise.rulebook.RuleBook;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** Reads the standing entries of a case in order, with the rule book in hand, and lists all that is wrong at once. */
final class CaseReader {
    private final RuleBook rules;
    private final String family;
    private final Touches touches;
    private final List<Happening> happenings = new ArrayList<>();
    private final List<Skipped> skipped = new ArrayList<>();
    private final Set<String> open = new LinkedHashSet<>();
    private final List<String> problems = new ArrayList<>();
    private boolean accessRecorded;

    private CaseReader(RuleBook rules, String family) {
        this.rules = rules;
        this.family = family;
        this.touches = new Touches(rules, family);
    }

    static Readings read(RuleBook rules, CaseFile file) {
        String family = file.phone().family();
        if (!rules.families().containsKey(family)) {
            throw new CaseException(List.of(Quoted.of(family) + " is not a family of the rule book. "
                    + NearestId.advice(family, rules.families().keySet())));
        }
        CaseReader reader = new CaseReader(rules, family);
        file.standing().forEach(reader::read);
        if (!reader.problems.isEmpty()) {
            throw new CaseException(reader.problems);
        }
        return Preconditions.sift(Parents.in(rules, family), reader.happenings, reader.skipped, reader.open);
    }

    private void read(Entry entry) {
        if (entry instanceof Report report) {
            report(report);
        } else if (entry instanceof Try tried) {
            tried(tried);
        } else if (entry instanceof Repair repair) {
            repair(repair);
        } else if (entry instanceof Opened opened) {
            opened(opened);
        } else if (entry instanceof Closed) {
            accessRecorded = true;
            open.clear();
        } else if (entry instanceof Meanwhile meanwhile) {
            Lapse lapse = known(entry, meanwhile.what(), "a way to change by itself", rules.lapses());
            if (lapse != null) {
                happenings.add(touches.of(meanwhile, lapse));
            }
        }
    }

    private void report(Report report) {
        Optional<Question> found = rules.question(report.about());
        if (found.isEmpty()) {
            Set<String> asked = new TreeSet<>(rules.observations().keySet());
            asked.addAll(rules.choices().keySet());
            problem(
                    report,
                    Quoted.of(report.about()) + " is not an observation. " + NearestId.advice(report.about(), asked));
            return;
        }
        Question question = found.get();
        Choice.Answer chosen = question.answers().get(report.answer());
        if (!question.families().contains(family)) {
            problem(
                    report,
                    Quoted.of(report.about()) + " is not asked of a " + family
                            + ". Remove the entry or correct the family.");
        } else if (chosen == null && !report.answer().equals(Report.CANT_TELL)) {
            problem(
                    report,
                    Quoted.of(report.answer()) + " does not answer " + Quoted.of(question.id()) + ". Use "
                            + String.join(", ", question.answers().keySet()) + " or " + Report.CANT_TELL + ".");
        } else if (chosen != null) {
            chosen.settles()
                    .forEach((id, yes) -> Optional.ofNullable(
                                    rules.observations().get(id))
                            .filter(o -> o.families().contains(family))
                            .ifPresent(o -> reading(new Reading(report, o, yes))));
        }
    }

    /** Our own looks at what is closed are impossible; a picture may show what was open once. */
    private void reading(Reading reading) {
        Observation observation = reading.observation();
        boolean own =
                reading.entry().kind() == EvidenceKind.LOOK || reading.entry().kind() == EvidenceKind.METER;
        if (own
                && accessRecorded
                && observation.access().filter(a -> !open.contains(a)).isPresent()) {
            skipped.add(new Skipped(
                    reading.entry().id(),
                    observation.id(),
                    "could not be observed: it needs \"" + label(observation.access()) + "\", and the phone was "
                            + state()));
        } else {
            happenings.add(reading);
        }
    }

    private void tried(Try tried) {
        Confirmation confirmation = known(tried, tried.confirmation(), "a confirmation", rules.confirmations());
        if (confirmation == null) {
            return;
        }
        if (!confirmation.families().contains(family)) {
            problem(
                    tried,
                    Quoted.of(tried.confirmation()) + " is not done on a " + family
                            + ". Remove the entry or correct the family.");
        } else if (confirmation.access().filter(a -> !open.contains(a)).isPresent()) {
            problem(
                    tried,
                    Quoted.of(tried.confirmation()) + " needs \"" + label(confirmation.access())
                            + "\", and the phone was " + state() + ". Record that it was opened first.");
        } else {
            happenings.add(touches.of(tried, confirmation));
        }
    }

    private void repair(Repair repair) {
        List<Part> parts = new ArrayList<>();
        for (String id : repair.parts()) {
            Part part = known(repair, id, "a part", rules.parts());
            if (part == null) {
                continue;
            }
            if (!part.families().contains(family)) {
                problem(
                        repair,
                        Quoted.of(id) + " does not fit a " + family + ". Remove the entry or correct the family.");
            } else if (part.access().filter(a -> !open.contains(a)).isPresent()) {
                problem(
                        repair,
                        Quoted.of(id) + " is fitted with \"" + label(part.access()) + "\", and the phone was " + state()
                                + ". Record that it was opened first.");
            } else {
                parts.add(part);
            }
        }
        Grade grade = known(repair, repair.grade(), "a grade of part", rules.grades());
        if (grade != null) {
            happenings.add(touches.of(repair, parts, grade));
        }
    }

    private void opened(Opened opened) {
        accessRecorded = true;
        Access state = known(opened, opened.access(), "a state of opening", rules.access());
        if (state == null) {
            return;
        }
        if (!state.families().contains(family)) {
            problem(
                    opened,
                    Quoted.of(opened.access()) + " is not a state of a " + family
                            + ". Remove the entry or correct the family.");
            return;
        }
        List<Access> steps = rules.pathTo(Optional.of(state.id())).stream()
                .filter(a -> !open.contains(a.id()))
                .toList();
        happenings.addAll(touches.of(opened, steps));
        steps.forEach(a -> open.add(a.id()));
    }

    private <T> @Nullable T known(Entry entry, String id, String what, Map<String, T> all) {
        T found = all.get(id);
        if (found == null) {
            problem(entry, Quoted.of(id) + " is not " + what + ". " + NearestId.advice(id, all.keySet()));
        }
        return found;
    }

    private void problem(Entry entry, String sentence) {
        problems.add("entry " + Quoted.of(entry.id()) + ": " + sentence);
    }

    private String label(Optional<String> access) {
        return access.map(a -> Optional.ofNullable(rules.access().get(a))
                        .map(Access::label)
                        .orElse(a))
                .orElse("");
    }

    private String state() {
        return open.isEmpty() ? "closed then" : "open only as far as " + String.join(", ", open) + " then";
    }
}
