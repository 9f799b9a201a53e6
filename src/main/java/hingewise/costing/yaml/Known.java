package hingewise.costing.yaml;

import hingewise.rulebook.RuleBook;
import java.util.Set;

/**
 * The words of the rule book that a shop file may use.
 *
 * @param strict whether any other word is a mistake; if not, what it stands before is passed over
 */
record Known(
        Set<String> families,
        Set<String> components,
        Set<String> histories,
        Set<String> observations,
        Set<String> parts,
        Set<String> grades,
        boolean strict) {
    static Known of(RuleBook rules, boolean strict) {
        return new Known(
                rules.families().keySet(),
                rules.components().keySet(),
                rules.histories().keySet(),
                rules.observations().keySet(),
                rules.parts().keySet(),
                rules.grades().keySet(),
                strict);
    }
}
