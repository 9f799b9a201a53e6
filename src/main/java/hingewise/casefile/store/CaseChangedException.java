package hingewise.casefile.store;

/** The case file is not as it was when it was read, so saving would undo somebody's work. */
public final class CaseChangedException extends CaseFileException {
    private static final long serialVersionUID = 1L;

    CaseChangedException(String message) {
        super(message);
    }
}
