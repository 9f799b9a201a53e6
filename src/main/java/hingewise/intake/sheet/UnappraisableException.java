package hingewise.intake.sheet;

/** Nothing can be said of a listing; one sentence says why and what to do. */
public final class UnappraisableException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final String problem;

    public UnappraisableException(String problem) {
        super(problem);
        this.problem = problem;
    }

    public String problem() {
        return problem;
    }
}
