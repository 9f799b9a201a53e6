package hingewise.wizard.model;

import hingewise.casefile.CaseFile;
import hingewise.casefile.Entry;
import hingewise.casefile.Meanwhile;
import hingewise.casefile.Repair;
import hingewise.casefile.Report;
import hingewise.casefile.Try;
import hingewise.casefile.Withdrawal;
import hingewise.rulebook.EvidenceKind;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * Recording and taking back answers. Each kind of evidence holds one answer of its own: what the seller says stays
 * beside what one's own look found.
 *
 * @param by who records
 * @param now when
 */
record Answers(String by, Instant now) {
    /** The standing answers to a question, in timeline order. */
    static List<Report> to(CaseFile file, String question) {
        return file.standing().stream()
                .filter(Report.class::isInstance)
                .map(Report.class::cast)
                .filter(r -> r.about().equals(question))
                .toList();
    }

    /**
     * The latest standing answer to a question by one kind of evidence about the phone as it is: what was said before a
     * try, a repair or a time of change is about the phone as it was.
     */
    static Optional<Report> to(CaseFile file, String question, EvidenceKind kind) {
        Optional<Report> latest = Optional.empty();
        for (Entry entry : file.standing()) {
            if (entry instanceof Try || entry instanceof Repair || entry instanceof Meanwhile) {
                latest = Optional.empty();
            } else if (entry instanceof Report r && r.about().equals(question) && r.kind() == kind) {
                latest = Optional.of(r);
            }
        }
        return latest;
    }

    /** The case with this answer; the latest of the same kind is withdrawn, for this corrects it. */
    CaseFile give(CaseFile file, String question, EvidenceKind kind, String answer) {
        return give(file, question, kind, answer, "");
    }

    /** The same, with a remark. */
    CaseFile give(CaseFile file, String question, EvidenceKind kind, String answer, String remark) {
        Optional<Report> before = to(file, question, kind);
        if (before.map(Report::answer).equals(Optional.of(answer))) {
            return file;
        }
        CaseFile cleared = before.map(b -> takeBack(file, b.id())).orElse(file);
        return cleared.with(
                new Report(cleared.nextId(), at(cleared), by, kind, question, answer, Optional.empty(), remark));
    }

    /** The case without this entry; the file keeps that there was one. */
    CaseFile takeBack(CaseFile file, String entry) {
        return file.with(new Withdrawal(file.nextId(), at(file), by, entry, ""));
    }

    /** Now, but never before the last entry, which a computer with a faster clock may have written. */
    Instant at(CaseFile file) {
        return file.entries().stream().map(Entry::at).reduce(now, (a, b) -> a.isAfter(b) ? a : b);
    }
}
