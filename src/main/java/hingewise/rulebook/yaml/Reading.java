package hingewise.rulebook.yaml;

import hingewise.rulebook.RuleBook;
import java.util.List;
import java.util.Optional;

/**
 * What came of reading a rule book.
 *
 * @param ruleBook present exactly when no problem is an error
 * @param problems all there are, by file and line
 */
public record Reading(Optional<RuleBook> ruleBook, List<Problem> problems) {
    public Reading {
        problems = List.copyOf(problems);
    }
}
