package hingewise.inference;

/**
 * The variable is known for certain.
 *
 * @param yes its value
 */
public record Hard(boolean yes) implements Finding {
    @Override
    public double ifYes() {
        return yes ? 1 : 0;
    }

    @Override
    public double ifNo() {
        return yes ? 0 : 1;
    }
}
