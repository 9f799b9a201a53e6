package hingewise.assessment;

import hingewise.planning.Sheet;
import hingewise.rulebook.Caution;
import hingewise.rulebook.RuleBook;
import hingewise.rulebook.Tool;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A sheet with each caution where it belongs. What the case brings up stands above all; what comes with a station or an end
 * stands in full the first time it applies, with a number, and is called up by that number from there on.
 *
 * @param sheet empty while a caution stops the work
 * @param tools what the stations take, in their order, and then what is opened for parts that are likely to be fitted;
 *     none before the phone is here
 * @param atStations by station, in order
 * @param atEnds by end, in order: what comes with fitting its parts
 */
public record BenchSheet(
        Assessment assessment, Optional<Sheet> sheet, List<Tool> tools, List<Care> atStations, List<Care> atEnds) {
    public BenchSheet {
        tools = List.copyOf(tools);
        atStations = List.copyOf(atStations);
        atEnds = List.copyOf(atEnds);
    }

    /** A caution and its number on the sheet, from 1. */
    public record Numbered(int number, Caution caution) {}

    /**
     * What to be careful of at one place.
     *
     * @param here in full
     * @param again numbers of those that stand further up
     */
    public record Care(List<Numbered> here, List<Integer> again) {
        public Care {
            here = List.copyOf(here);
            again = List.copyOf(again);
        }
    }

    static BenchSheet stopped(Assessment assessment) {
        return new BenchSheet(assessment, Optional.empty(), List.of(), List.of(), List.of());
    }

    static BenchSheet of(RuleBook rules, Assessment assessment, Sheet sheet) {
        Set<Caution> above = assessment.cautions().stream()
                .filter(ShownCaution::brought)
                .map(ShownCaution::caution)
                .collect(Collectors.toSet());
        Map<Caution, Integer> numbers = new LinkedHashMap<>();
        List<Care> atStations = sheet.stations().stream()
                .map(s -> care(Cautions.of(rules, s), above, numbers))
                .toList();
        List<Care> atEnds = sheet.ends().stream()
                .map(e -> care(
                        e.decision().parts().stream()
                                .flatMap(p -> Cautions.of(rules, p).stream())
                                .collect(Collectors.toCollection(LinkedHashSet::new)),
                        above,
                        numbers))
                .toList();
        return new BenchSheet(assessment, Optional.of(sheet), tools(rules, assessment, sheet), atStations, atEnds);
    }

    private static List<Tool> tools(RuleBook rules, Assessment assessment, Sheet sheet) {
        if (assessment.plan().decision().ofOffer()) {
            return List.of();
        }
        Set<String> open = assessment.diagnosis().readings().open();
        Stream<String> atStations = sheet.stations().stream()
                .flatMap(s -> Stream.concat(
                        s.opens().stream().flatMap(a -> a.tools().stream()), s.confirmation().tools().stream()));
        Stream<String> toFit = sheet.parts().stream()
                .filter(p -> p.chance() >= Sheet.LEAST_CHANCE)
                .flatMap(p -> rules.pathTo(p.part().access()).stream())
                .filter(a -> !open.contains(a.id()))
                .flatMap(a -> a.tools().stream());
        return Stream.concat(atStations, toFit)
                .distinct()
                .flatMap(t -> Optional.ofNullable(rules.tools().get(t)).stream())
                .toList();
    }

    private static Care care(Collection<Caution> cautions, Set<Caution> above, Map<Caution, Integer> numbers) {
        Set<Caution> before = new HashSet<>(numbers.keySet());
        List<Numbered> here = new ArrayList<>();
        List<Integer> again = new ArrayList<>();
        for (Caution caution : cautions) {
            if (before.contains(caution)) {
                again.add(Objects.requireNonNull(numbers.get(caution)));
            } else if (!above.contains(caution)) {
                numbers.putIfAbsent(caution, numbers.size() + 1);
                here.add(new Numbered(numbers.size(), caution));
            }
        }
        again.sort(null);
        return new Care(here, again);
    }
}
