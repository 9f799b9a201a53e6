package hingewise.report;

import hingewise.casefile.Closed;
import hingewise.casefile.Entry;
import hingewise.casefile.Meanwhile;
import hingewise.casefile.Opened;
import hingewise.casefile.Price;
import hingewise.casefile.Repair;
import hingewise.casefile.Report;
import hingewise.casefile.Try;
import hingewise.casefile.Withdrawal;
import hingewise.rulebook.Access;
import hingewise.rulebook.Choice;
import hingewise.rulebook.Confirmation;
import hingewise.rulebook.Grade;
import hingewise.rulebook.Lapse;
import hingewise.rulebook.Observation;
import hingewise.rulebook.Part;
import hingewise.rulebook.Question;
import hingewise.rulebook.RuleBook;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** An entry of a timeline in a few words. */
public final class EntryText {
    private static final DateTimeFormatter TIME =
            DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm").withZone(ZoneOffset.UTC);

    private EntryText() {}

    /** When it was recorded, to the minute, in UTC. */
    public static String time(Entry entry) {
        return TIME.format(entry.at());
    }

    /** What it says, in the rule book's words; an id the rule book lacks stands for itself. */
    public static String of(RuleBook rules, Entry entry) {
        if (entry instanceof Report r) {
            return r.kind().id() + ": " + said(rules, r)
                    + r.resultOf().map(t -> " (result of " + t + ")").orElse("");
        } else if (entry instanceof Try t) {
            return "try: " + label(rules.confirmations(), t.confirmation(), Confirmation::label);
        } else if (entry instanceof Repair r) {
            return "repair: "
                    + r.parts().stream()
                            .map(p -> label(rules.parts(), p, Part::label))
                            .collect(Collectors.joining(", "))
                    + ", " + label(rules.grades(), r.grade(), Grade::label);
        } else if (entry instanceof Opened o) {
            return "opened: " + label(rules.access(), o.access(), Access::label);
        } else if (entry instanceof Closed) {
            return "closed";
        } else if (entry instanceof Meanwhile m) {
            return "meanwhile: " + label(rules.lapses(), m.what(), Lapse::label);
        } else if (entry instanceof Price p) {
            return p.what().id() + ": " + p.amount().getAmount().toPlainString() + " "
                    + p.amount().getCurrencyUnit().getCode();
        } else if (entry instanceof Withdrawal w) {
            return "withdrawn: entry " + w.withdraws();
        }
        throw new IllegalArgumentException("no words for " + entry);
    }

    private static String said(RuleBook rules, Report report) {
        Observation observation = rules.observations().get(report.about());
        if (observation != null && report.answer().equals(Question.YES)) {
            return observation.whenYes();
        }
        if (observation != null && report.answer().equals(Question.NO)) {
            return observation.whenNo();
        }
        Optional<Question> question = rules.question(report.about());
        String answer = question.map(q -> q.answers().get(report.answer()))
                .map(Choice.Answer::label)
                .orElse(report.answer().equals(Report.CANT_TELL) ? "cannot tell" : report.answer());
        return question.map(Question::label).orElse(report.about()) + ": " + answer;
    }

    private static <T> String label(Map<String, T> all, String id, Function<T, String> label) {
        return Optional.ofNullable(all.get(id)).map(label).orElse(id);
    }
}
