package hingewise.intake.sheet;

/** Somebody asked to stop; what was done so far is kept. */
public final class StoppedException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    StoppedException() {
        super("stopped");
    }
}
