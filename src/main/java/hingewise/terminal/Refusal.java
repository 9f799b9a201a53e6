package hingewise.terminal;

import java.util.List;

/** A command cannot do what was asked; the lines say why and what to do instead. */
final class Refusal extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final ExitCode code;
    private final List<String> lines;

    Refusal(ExitCode code, List<String> lines) {
        super(String.join("\n", lines));
        this.code = code;
        this.lines = List.copyOf(lines);
    }

    static Refusal badInput(String sentence) {
        return new Refusal(ExitCode.BAD_INPUT, List.of(sentence));
    }

    ExitCode code() {
        return code;
    }

    List<String> lines() {
        return lines;
    }
}
