package hingewise.inference;

/** What is known has probability 0 under the network, so nothing follows from it. */
public final class ImpossibleEvidenceException extends RuntimeException {
    private static final long serialVersionUID = 1;

    ImpossibleEvidenceException(String message) {
        super(message);
    }
}
