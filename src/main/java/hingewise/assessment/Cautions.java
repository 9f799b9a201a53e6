package hingewise.assessment;

import hingewise.costing.OrderLine;
import hingewise.diagnosis.Diagnosis;
import hingewise.planning.Sheet;
import hingewise.planning.Step;
import hingewise.rulebook.Access;
import hingewise.rulebook.Caution;
import hingewise.rulebook.Part;
import hingewise.rulebook.RuleBook;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What to be careful of, and what brings it up. */
public final class Cautions {
    private Cautions() {}

    /** What comes with a step: with what is done, and with what has to be opened for it. In the rule book's order. */
    public static List<Caution> of(RuleBook rules, Step step) {
        return of(rules, step.confirmation().cautions(), step.opens());
    }

    /** What comes with fitting a part: with all that has to be opened for it. In the rule book's order. */
    public static List<Caution> of(RuleBook rules, OrderLine line) {
        return of(rules, line.part());
    }

    /** The same, of a part that is not on order. */
    static List<Caution> of(RuleBook rules, Part part) {
        return of(
                rules,
                Set.of(),
                rules.pathTo(part.access()).stream().map(Access::id).toList());
    }

    /** What comes with a station of a sheet, as with a step. */
    static List<Caution> of(RuleBook rules, Sheet.Station station) {
        return of(
                rules,
                station.confirmation().cautions(),
                station.opens().stream().map(Access::id).toList());
    }

    private static List<Caution> of(RuleBook rules, Set<String> own, Collection<String> opens) {
        Set<String> named = Stream.concat(
                        own.stream(),
                        opens.stream()
                                .flatMap(a -> Optional.ofNullable(rules.access().get(a)).stream())
                                .flatMap(a -> a.cautions().stream()))
                .collect(Collectors.toSet());
        return rules.cautions().values().stream()
                .filter(c -> named.contains(c.id()) || c.access().stream().anyMatch(opens::contains))
                .toList();
    }

    /** What the case itself brings up. */
    static List<Caution> broughtBy(RuleBook rules, Diagnosis diagnosis) {
        Set<String> seen = diagnosis.readings().standing();
        return rules.cautions().values().stream()
                .filter(c -> c.observations().stream().anyMatch(seen::contains)
                        || c.causes().entrySet().stream().anyMatch(e -> diagnosis.chanceOf(e.getKey()) >= e.getValue()))
                .toList();
    }
}
