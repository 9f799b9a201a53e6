package hingewise.casefile;

import java.util.List;

/** Entries contradict each other's order or names; every such thing is listed, one sentence each. */
public final class TimelineException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final List<String> problems;

    private TimelineException(List<String> problems) {
        super(String.join("\n", problems));
        this.problems = List.copyOf(problems);
    }

    static void ifAny(List<String> problems) {
        if (!problems.isEmpty()) {
            throw new TimelineException(problems);
        }
    }

    public List<String> problems() {
        return problems;
    }
}
