package hingewise.planning;

import hingewise.diagnosis.Diagnosis;
import hingewise.rulebook.Confirmation;
import hingewise.rulebook.EvidenceKind;
import hingewise.rulebook.Moment;
import java.util.Set;

/**
 * When a case is.
 *
 * @param now the moments whose confirmations can be carried out
 */
record Moments(Set<Moment> now) {
    /** Before anybody here has looked, only the seller and the listing's pictures can be asked. */
    static Moments of(Diagnosis diagnosis) {
        boolean arrived = diagnosis.readings().used().stream()
                .map(r -> r.entry().kind())
                .anyMatch(k -> k == EvidenceKind.LOOK || k == EvidenceKind.METER);
        return arrived ? here(diagnosis) : new Moments(Set.of(Moment.LISTING));
    }

    /** The phone is here, whether or not anybody has looked. */
    static Moments here(Diagnosis diagnosis) {
        return new Moments(
                diagnosis.readings().sinceRepair().isPresent()
                        ? Set.of(Moment.ARRIVAL, Moment.OPENED, Moment.AFTER_REPAIR)
                        : Set.of(Moment.ARRIVAL, Moment.OPENED));
    }

    boolean listing() {
        return now.contains(Moment.LISTING);
    }

    /** What kind of evidence a confirmation yields now. */
    EvidenceKind kind(Confirmation c) {
        return c.kind() == Confirmation.Kind.QUESTION
                ? EvidenceKind.CLAIM
                : listing() ? EvidenceKind.PHOTO : EvidenceKind.LOOK;
    }
}
