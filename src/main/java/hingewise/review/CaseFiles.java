package hingewise.review;

import hingewise.casefile.CaseFile;
import hingewise.casefile.Phone;
import hingewise.casefile.Report;
import hingewise.rulebook.EvidenceKind;
import hingewise.rulebook.RuleCase;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The cases of a rule book as case files. */
public final class CaseFiles {
    private CaseFiles() {}

    /** What the case has seen, recorded in order by somebody named after the kind of evidence. */
    public static CaseFile of(RuleCase rule) {
        List<Report> reports = new ArrayList<>();
        for (RuleCase.Seen seen : rule.seen()) {
            reports.add(report(reports.size() + 1, seen.kind(), seen.about(), seen.answer()));
        }
        return new CaseFile(rule.title(), true, new Phone(rule.family(), ""), List.copyOf(reports));
    }

    static Report report(int number, EvidenceKind kind, String about, String answer) {
        return new Report("e" + number, Instant.EPOCH, kind.id(), kind, about, answer, Optional.empty(), "");
    }
}
