package hingewise.assessment;

import hingewise.rulebook.Caution;

/**
 * A caution that applies to this case.
 *
 * @param stops whether work stops now; a stopping caution that merely comes with a proposed step only warns
 * @param brought whether the case itself brings it up, by what was reported or by how likely a cause is; otherwise it
 *     comes with a step or a part that is proposed, and is to be read there
 */
public record ShownCaution(Caution caution, boolean stops, boolean brought) {
    /** How a stop comes to an end. */
    public static final String LIFTED =
            "It ends once the repair is recorded and what was seen is looked at again and found in order, or once a"
                    + " report that was wrong is withdrawn.";

    public ShownCaution {
        if (stops && !brought) {
            throw new IllegalArgumentException(caution.id() + " stops the work of a case that does not bring it up");
        }
    }
}
