package hingewise.assessment;

import hingewise.assessment.CareOrder.Care;
import hingewise.planning.Sheet;
import hingewise.rulebook.RuleBook;
import hingewise.rulebook.Tool;
import java.util.LinkedHashSet;
import java.util.List;
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

    static BenchSheet stopped(Assessment assessment) {
        return new BenchSheet(assessment, Optional.empty(), List.of(), List.of(), List.of());
    }

    static BenchSheet of(RuleBook rules, Assessment assessment, Sheet sheet) {
        CareOrder order = new CareOrder(assessment);
        List<Care> atStations = sheet.stations().stream()
                .map(s -> order.at(Cautions.of(rules, s)))
                .toList();
        List<Care> atEnds = sheet.ends().stream()
                .map(e -> order.at(e.decision().parts().stream()
                        .flatMap(p -> Cautions.of(rules, p).stream())
                        .collect(Collectors.toCollection(LinkedHashSet::new))))
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
}
