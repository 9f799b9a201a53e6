package hingewise.intake.store;

import java.util.List;

/** The examples of a rule book cannot be learned from; every mistake is listed, with file, line and what to do. */
public final class ExamplesException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final List<String> problems;

    ExamplesException(List<String> problems) {
        super(String.join("\n", problems));
        this.problems = List.copyOf(problems);
    }

    public List<String> problems() {
        return problems;
    }
}
