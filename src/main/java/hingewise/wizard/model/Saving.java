package hingewise.wizard.model;

/**
 * Whether the case as shown lies on disk.
 *
 * @param words for the person: what happened, and what to do
 */
public record Saving(Status status, String words) {
    /** How far the saving has come. */
    public enum Status {
        /** The case has no file: every answer is kept in the window only. */
        NO_FILE,
        RUNNING,
        SAVED,
        /** The file could not be written; the answers are still in the window. */
        FAILED,
        /** Somebody else changed or removed the file; the answers are still in the window. */
        CONFLICT
    }

    /** Whether the person must do something, or else lose answers on closing. */
    public boolean troubled() {
        return status == Status.FAILED || status == Status.CONFLICT;
    }
}
