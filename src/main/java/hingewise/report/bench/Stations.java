package hingewise.report.bench;

import hingewise.assessment.BenchSheet;
import hingewise.assessment.CareOrder;
import hingewise.planning.Sheet;
import hingewise.planning.Step;
import hingewise.report.bench.BenchPage.Row;
import hingewise.rulebook.Access;
import hingewise.rulebook.Confirmation;
import hingewise.rulebook.Observation;
import hingewise.rulebook.Part;
import hingewise.rulebook.RuleBook;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Stations and ends of a sheet in words. */
final class Stations {
    private final RuleBook rules;
    private final BenchSheet bench;
    private final List<Sheet.Station> stations;

    Stations(RuleBook rules, BenchSheet bench, List<Sheet.Station> stations) {
        this.rules = rules;
        this.bench = bench;
        this.stations = stations;
    }

    List<BenchPage.Station> all() {
        return stations.stream().map(this::station).toList();
    }

    private BenchPage.Station station(Sheet.Station station) {
        Outcomes outcomes = new Outcomes(station, rules::stops);
        Confirmation c = station.confirmation();
        List<Row> rows = new ArrayList<>();
        station.first()
                .forEach(n -> rows.add(Row.of(
                        "first",
                        n.observation().question() + " Go on only if " + (n.answer() ? "yes." : "no.")
                                + (n.stopsWork(rules::stops)
                                        ? " If yes, all work stops: record it and do no other station."
                                        : ""))));
        if (bench.assessment().plan().decision().ofOffer()) {
            rows.add(Row.of("who", Step.before(c)));
        }
        if (!station.opens().isEmpty()) {
            rows.add(
                    Row.of("open", station.opens().stream().map(Access::label).collect(Collectors.joining(", then "))));
        }
        rows.addAll(care(bench.atStations().get(station.number() - 1)));
        int before = before(station);
        rows.add(Row.of("do", before > 0 ? "as at station " + before : c.how()));
        if (station.looks().size() > 1 && before == 0) {
            rows.add(Row.of(
                    c.kind() == Confirmation.Kind.QUESTION ? "ask" : "look",
                    (c.kind() == Confirmation.Kind.TRY ? "afterwards for " : "for ")
                            + station.looks().stream().map(Observation::label).collect(Collectors.joining("; "))));
        }
        return new BenchPage.Station(
                station.number(),
                c.label(),
                (station.number() == 1 ? "begin here" : Say.percent(station.chance()) + " get here") + ", "
                        + Say.minutes(station.minutes())
                        + (station.cost().isZero() ? "" : ", " + Say.money(station.cost())),
                rows,
                station.branches().stream().map(b -> branch(outcomes, b)).toList());
    }

    /** The station at which the same is done and told, or 0. */
    private int before(Sheet.Station station) {
        return stations.stream()
                .filter(s -> s.number() < station.number()
                        && s.confirmation().equals(station.confirmation())
                        && s.looks().equals(station.looks()))
                .findFirst()
                .map(Sheet.Station::number)
                .orElse(0);
    }

    private BenchPage.Branch branch(Outcomes outcomes, Sheet.Branch branch) {
        String when = outcomes.of(branch);
        String chance = Say.percent(branch.chance());
        if (outcomes.stopsWork(branch)) {
            return new BenchPage.Branch(
                    when, chance, "all work stops: record it, ask again", Optional.empty(), Optional.empty());
        }
        if (branch.way() instanceof Sheet.Way.Go go) {
            String to = "station " + go.station();
            return new BenchPage.Branch(when, chance, to, Optional.of(go.station()), Optional.empty());
        }
        if (branch.way() instanceof Sheet.Way.Stop stop) {
            String letter = Ends.letter(stop.end());
            return new BenchPage.Branch(when, chance, "stop, end " + letter, Optional.empty(), Optional.of(letter));
        }
        String next = branch.way() instanceof Sheet.Way.AskAgain again
                ? again.next().map(c -> "; next may be: " + c.label()).orElse("")
                : "";
        return new BenchPage.Branch(when, chance, "record it, ask again" + next, Optional.empty(), Optional.empty());
    }

    List<BenchPage.End> ends(List<Sheet.End> ends) {
        return ends.stream()
                .map(e -> new BenchPage.End(
                        Ends.letter(e.number()),
                        words(ends, e),
                        Say.percent(e.chance()),
                        care(bench.atEnds().get(e.number() - 1))))
                .toList();
    }

    /** A repair that fits all that another does, and more, is told by what it fits besides. */
    private static String words(List<Sheet.End> ends, Sheet.End end) {
        List<Part> parts = end.decision().parts();
        Optional<Sheet.End> less = ends.stream()
                .filter(e -> e.number() < end.number() && e.decision().parts().size() > 1)
                .filter(e -> parts.containsAll(e.decision().parts()))
                .max(Comparator.comparingInt(e -> e.decision().parts().size()));
        return less.map(l -> "fit all of " + Ends.letter(l.number()) + ", and "
                        + parts.stream()
                                .filter(p -> !l.decision().parts().contains(p))
                                .map(Part::label)
                                .collect(Collectors.joining(", ")))
                .orElseGet(() -> end.decision().order());
    }

    private static List<Row> care(CareOrder.Care care) {
        List<Row> rows = new ArrayList<>();
        care.here()
                .forEach(c -> rows.add(
                        new Row("care", "c" + c.number() + " " + c.caution().text(), true)));
        if (!care.again().isEmpty()) {
            String numbers = care.again().stream().map(n -> "c" + n).collect(Collectors.joining(", "));
            rows.add(new Row("care", (rows.isEmpty() ? "" : "and again ") + numbers, true));
        }
        return rows;
    }
}
