package hingewise.costing;

import hingewise.casefile.CaseFile;
import hingewise.casefile.Entry;
import hingewise.casefile.Opened;
import hingewise.casefile.Repair;
import hingewise.casefile.Report;
import hingewise.rulebook.EvidenceKind;
import java.time.Duration;
import java.util.List;
import java.util.Optional;

/**
 * Whether a phone can be given back, as of the last entry of its case.
 *
 * @param closed why it cannot; empty if it can
 */
public record Returns(Optional<String> closed) {
    /** The state of a case. */
    public static Returns of(CaseFile file, Shop shop) {
        if (shop.returns().isEmpty()) {
            return new Returns(Optional.of("The shop file names no terms on which a seller takes a phone back."));
        }
        List<Entry> entries = file.standing();
        if (entries.stream().anyMatch(e -> e instanceof Opened || e instanceof Repair)) {
            return new Returns(Optional.of("It was opened here, so it is not given back to the seller."));
        }
        Optional<Entry> arrival = entries.stream()
                .filter(e -> e instanceof Report r && (r.kind() == EvidenceKind.LOOK || r.kind() == EvidenceKind.METER))
                .findFirst();
        int days = shop.returns().get().days();
        boolean late = arrival.isPresent()
                && Duration.between(
                                        arrival.get().at(),
                                        entries.get(entries.size() - 1).at())
                                .compareTo(Duration.ofDays(days))
                        > 0;
        return new Returns(
                late
                        ? Optional.of(
                                "More than " + days + " days have gone by since it was first looked at, so it is not"
                                        + " given back to the seller.")
                        : Optional.empty());
    }

    /** Whether it can be given back. */
    public boolean open() {
        return closed.isEmpty();
    }
}
