package hingewise.rulebook.yaml;

import hingewise.plain.Quoted;
import hingewise.rulebook.RuleBook;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What came of reading a rule book.
 *
 * @param ruleBook present exactly when no problem is an error
 * @param problems all there are, by file and line
 * @param places where each entry stands, by section and id joined by a slash
 */
public record Reading(Optional<RuleBook> ruleBook, List<Problem> problems, Map<String, Place> places) {
    public Reading {
        problems = List.copyOf(problems);
        places = Map.copyOf(places);
    }

    /** A reading of which nothing came but problems. */
    static Reading failed(List<Problem> problems) {
        return new Reading(Optional.empty(), problems, Map.of());
    }

    /**
     * A warning about an entry, told where the entry stands.
     *
     * @param section the word that heads its section
     * @throws IllegalArgumentException if the rule book has no such entry
     */
    public Problem warning(String section, String id, String what, String advice) {
        Place place = places.get(section + "/" + id);
        if (place == null) {
            throw new IllegalArgumentException("no entry \"" + id + "\" in section \"" + section + "\"");
        }
        return new Problem(Severity.WARNING, place.file(), place.line(), Quoted.of(id) + ": " + what, advice);
    }
}
