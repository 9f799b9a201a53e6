package hingewise.costing.csv;

import hingewise.rulebook.RuleBook;
import java.util.Set;

/** The words of the rule book that a price book may use. */
record Vocabulary(Set<String> parts, Set<String> grades) {
    static Vocabulary of(RuleBook rules) {
        return new Vocabulary(rules.parts().keySet(), rules.grades().keySet());
    }
}
