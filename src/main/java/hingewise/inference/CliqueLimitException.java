package hingewise.inference;

/** The network together with what is observed is too entangled to be solved exactly. Nothing was approximated. */
public final class CliqueLimitException extends RuntimeException {
    private static final long serialVersionUID = 1;

    private final int size;

    CliqueLimitException(int size) {
        super("the largest group of variables that must be considered together has " + size
                + " yes/no variables; the limit for an exact answer is " + Solver.LARGEST_CLIQUE);
        this.size = size;
    }

    /** Yes/no variables in the largest clique found necessary. */
    public int size() {
        return size;
    }
}
