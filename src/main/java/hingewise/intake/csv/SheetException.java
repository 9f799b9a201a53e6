package hingewise.intake.csv;

import hingewise.plain.Quoted;
import java.nio.file.Path;
import java.util.List;

/** A whole sheet cannot be used; one sentence for each reason, with file and what to do. */
public final class SheetException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final List<String> problems;

    public SheetException(List<String> problems) {
        super(String.join("\n", problems));
        this.problems = List.copyOf(problems);
    }

    public static SheetException of(Path file, String problem) {
        return new SheetException(List.of(Quoted.line(file.toString()) + ": " + problem));
    }

    public List<String> problems() {
        return problems;
    }
}
