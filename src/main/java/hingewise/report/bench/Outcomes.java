package hingewise.report.bench;

import hingewise.planning.Sheet;
import hingewise.rulebook.Observation;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Says what was seen where a branch is taken, in as few words as tell it from the others. */
final class Outcomes {
    private final Sheet.Station station;
    private final Predicate<String> stops;
    private final List<Observation> looks;

    /** @param stops whether "yes" to an observation stops all work, by id */
    Outcomes(Sheet.Station station, Predicate<String> stops) {
        this.station = station;
        this.stops = stops;
        this.looks = station.looks();
    }

    String of(Sheet.Branch branch) {
        if (branch.way() instanceof Sheet.Way.AskAgain again && again.next().isEmpty() && !stopsWork(branch)) {
            return station.branches().size() == 1 ? "whatever you see" : "anything else";
        }
        return branch.left() ? unmet() : seen(branch.reports());
    }

    /** Whether a branch is taken only by what stops all work. */
    boolean stopsWork(Sheet.Branch branch) {
        return branch.stopsWork(station.first(), stops);
    }

    /** What stops all work is told where it is asked, and never leads to another station. */
    private String unmet() {
        List<Sheet.Need> first = station.first();
        List<Sheet.Need> going = first.stream().filter(n -> !n.stopsWork(stops)).toList();
        List<Sheet.Need> told = going.isEmpty() ? first : going;
        if (told.size() > 1) {
            return "a first answer is another" + (told.size() < first.size() ? ", none that stops work" : "");
        }
        return statement(told.get(0).observation(), !told.get(0).answer());
    }

    private String seen(List<Map<String, Boolean>> reports) {
        List<List<Optional<Boolean>>> cubes = cover(reports.stream()
                .map(r -> looks.stream()
                        .map(o -> Boolean.TRUE.equals(r.get(o.id())))
                        .toList())
                .collect(Collectors.toCollection(LinkedHashSet::new)));
        return cubes.stream().map(this::words).collect(Collectors.joining("; or "));
    }

    private static String statement(Observation o, boolean yes) {
        String words = yes ? o.whenYes() : o.whenNo();
        return words.endsWith(".") ? words.substring(0, words.length() - 1) : words;
    }

    private String words(List<Optional<Boolean>> cube) {
        List<String> there = labels(cube, Optional.of(true));
        List<String> not = labels(cube, Optional.of(false));
        boolean any = there.size() + not.size() < looks.size();
        if (there.isEmpty() && not.isEmpty()) {
            return looks.isEmpty() ? "when it is done" : "whatever you see";
        }
        if (looks.size() == 1) {
            return statement(looks.get(0), not.isEmpty());
        }
        if (there.isEmpty()) {
            return any ? "no " + and(not) : "none of these";
        }
        if (not.isEmpty()) {
            return any ? and(there) : "all of these";
        }
        return any ? and(there) + ", no " + and(not) : "only " + and(there);
    }

    private static String and(List<String> labels) {
        return String.join(" and ", labels);
    }

    private List<String> labels(List<Optional<Boolean>> cube, Optional<Boolean> which) {
        return IntStream.range(0, looks.size())
                .filter(i -> cube.get(i).equals(which))
                .mapToObj(i -> "\"" + looks.get(i).label() + "\"")
                .toList();
    }

    /** Few cubes that together hold exactly these reports: the largest that fit, until all are held. */
    private static List<List<Optional<Boolean>>> cover(Set<List<Boolean>> reports) {
        List<List<Optional<Boolean>>> fitting = new ArrayList<>();
        for (List<Boolean> report : reports) {
            for (int free = 0; free < 1 << report.size(); free++) {
                List<Optional<Boolean>> cube = cube(report, free);
                if (!fitting.contains(cube) && reports.containsAll(held(cube))) {
                    fitting.add(cube);
                }
            }
        }
        List<List<Optional<Boolean>>> chosen = new ArrayList<>();
        Set<List<Boolean>> left = new LinkedHashSet<>(reports);
        while (!left.isEmpty()) {
            List<Optional<Boolean>> best = fitting.stream()
                    .max(Comparator.comparingLong((List<Optional<Boolean>> c) ->
                                    held(c).stream().filter(left::contains).count())
                            .thenComparing(
                                    c -> c.stream().filter(Optional::isEmpty).count()))
                    .orElseThrow();
            chosen.add(best);
            held(best).forEach(left::remove);
        }
        return chosen;
    }

    private static List<Optional<Boolean>> cube(List<Boolean> report, int free) {
        return IntStream.range(0, report.size())
                .mapToObj(i -> (free >>> i & 1) == 1 ? Optional.<Boolean>empty() : Optional.of(report.get(i)))
                .toList();
    }

    private static List<List<Boolean>> held(List<Optional<Boolean>> cube) {
        List<List<Boolean>> held = List.of(List.of());
        for (Optional<Boolean> value : cube) {
            List<Boolean> values = value.map(List::of).orElse(List.of(false, true));
            held = held.stream()
                    .flatMap(h -> values.stream().map(v -> {
                        List<Boolean> longer = new ArrayList<>(h);
                        longer.add(v);
                        return List.copyOf(longer);
                    }))
                    .toList();
        }
        return held;
    }
}
