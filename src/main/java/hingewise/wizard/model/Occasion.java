package hingewise.wizard.model;

import hingewise.casefile.CaseFile;
import hingewise.casefile.Entry;
import hingewise.casefile.Opened;
import hingewise.casefile.Repair;
import hingewise.casefile.Report;
import hingewise.rulebook.EvidenceKind;
import hingewise.rulebook.Moment;
import hingewise.rulebook.Question;
import java.util.Set;

/** The occasions at which the wizard asks: each has its own questions and its usual kind of evidence. */
public enum Occasion {
    BEFORE_BUYING("Before buying", EvidenceKind.CLAIM, Set.of(Moment.LISTING)),
    ON_ARRIVAL("On arrival", EvidenceKind.LOOK, Set.of(Moment.ARRIVAL)),
    AT_THE_BENCH("At the bench", EvidenceKind.LOOK, Set.of(Moment.OPENED, Moment.AFTER_REPAIR));

    private final String label;
    private final EvidenceKind usual;
    private final Set<Moment> moments;

    Occasion(String label, EvidenceKind usual, Set<Moment> moments) {
        this.label = label;
        this.usual = usual;
        this.moments = moments;
    }

    /** Where a case stands: opened or worked on, at least looked at here, or only known from afar. */
    public static Occasion of(CaseFile file) {
        Occasion latest = BEFORE_BUYING;
        for (Entry entry : file.standing()) {
            boolean here = entry instanceof Report report
                    && (report.kind() == EvidenceKind.LOOK || report.kind() == EvidenceKind.METER);
            boolean inside = entry instanceof Opened || entry instanceof Repair;
            Occasion at = inside ? AT_THE_BENCH : here ? ON_ARRIVAL : BEFORE_BUYING;
            latest = at.compareTo(latest) > 0 ? at : latest;
        }
        return latest;
    }

    /** A few words for the person. */
    public String label() {
        return label;
    }

    /** The kind of evidence that answers mostly are at this occasion. */
    public EvidenceKind usualEvidence() {
        return usual;
    }

    /** Whether the question makes sense now. */
    public boolean asks(Question question) {
        return question.moments().stream().anyMatch(moments::contains);
    }
}
