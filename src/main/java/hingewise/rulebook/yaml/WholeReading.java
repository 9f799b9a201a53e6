package hingewise.rulebook.yaml;

import hingewise.rulebook.Examples;
import java.util.List;

/**
 * What came of reading a rule book with all its example sentences.
 *
 * @param reading the rule book, and the problems of all files
 * @param examples in the order of the files; of use only when there is no problem
 */
public record WholeReading(Reading reading, List<Examples> examples) {
    public WholeReading {
        examples = List.copyOf(examples);
    }

    static WholeReading failed(List<Problem> problems) {
        return new WholeReading(Reading.failed(problems), List.of());
    }
}
