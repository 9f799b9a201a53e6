package hingewise.diagnosis;

import java.util.List;

/** A case says something the rule book cannot understand; every such thing is listed, one sentence each. */
public final class CaseException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final List<String> problems;

    public CaseException(List<String> problems) {
        super(String.join("\n", problems));
        this.problems = List.copyOf(problems);
    }

    public List<String> problems() {
        return problems;
    }
}
