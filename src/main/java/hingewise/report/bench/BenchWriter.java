package hingewise.report.bench;

import hingewise.assessment.Assessment;
import hingewise.assessment.BenchSheet;
import hingewise.assessment.ShownCaution;
import hingewise.casefile.Phone;
import hingewise.planning.Plan;
import hingewise.planning.Sheet;
import hingewise.report.bench.BenchPage.Row;
import hingewise.report.bench.BenchPage.Twig;
import hingewise.rulebook.Access;
import hingewise.rulebook.RuleBook;
import hingewise.rulebook.Tool;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Puts a sheet into words. */
public final class BenchWriter {
    private final BenchSheet bench;
    private final Assessment assessment;
    private final RuleBook rules;

    private BenchWriter(RuleBook rules, BenchSheet bench) {
        this.bench = bench;
        this.assessment = bench.assessment();
        this.rules = rules.of(assessment.file().phone().family());
    }

    /** @param rules the rule book that the case was assessed with */
    public static BenchPage write(RuleBook rules, BenchSheet bench) {
        return new BenchWriter(rules, bench).page();
    }

    private BenchPage page() {
        Optional<Sheet> sheet = bench.sheet();
        List<Sheet.Station> stations = sheet.map(Sheet::stations).orElse(List.of());
        Stations words = new Stations(rules, bench, stations);
        return new BenchPage(
                assessment.file().title(),
                about(),
                stops(),
                sheet.map(this::overall).orElse(List.of()),
                assessment.cautions().stream()
                        .filter(c -> c.brought() && !c.stops())
                        .map(c -> c.caution().text())
                        .toList(),
                sheet.map(this::ready).orElse(List.of()),
                sheet.isPresent() ? List.of() : questions(),
                stations.stream().findFirst().map(s -> twig(stations, s, new HashSet<>(Set.of(1)))),
                words.all(),
                sheet.map(s -> words.ends(s.ends())).orElse(List.of()),
                sheet.map(s -> notes(s, assessment.plan())).orElse(List.of()));
    }

    private List<String> about() {
        Phone phone = assessment.file().phone();
        String family = rules.family(phone.family()).label();
        List<String> about = new ArrayList<>();
        about.add(phone.label().isBlank() ? family : family + ", " + phone.label());
        if (assessment.file().invented()) {
            about.add("Invented example: phone, people and findings do not exist.");
        }
        return about;
    }

    private List<String> stops() {
        List<String> stops = new ArrayList<>();
        assessment.cautions().stream()
                .filter(ShownCaution::stops)
                .forEach(c -> stops.add(c.caution().text()));
        if (!stops.isEmpty()) {
            stops.add(0, "STOP: work on this phone stops here. There is nothing to do at the bench.");
            stops.add(ShownCaution.LIFTED + " Then ask for a new sheet.");
        }
        return stops;
    }

    private List<String> overall(Sheet sheet) {
        Plan plan = assessment.plan();
        String now = Ends.brief(plan.decision());
        if (sheet.stations().isEmpty()) {
            return List.of(
                    plan.decision().ofOffer()
                            ? "Nothing is worth asking any more: " + now + "."
                            : "Nothing is worth doing before deciding. Decide now: " + now + ".",
                    "That is expected to cost " + Say.money(plan.now()) + ", all counted. " + atMost(plan)
                            + against(plan));
        }
        return List.of(
                "Until an end is reached: " + Say.minutes(sheet.minutes()) + " and "
                        + (sheet.material().isZero() ? "no" : Say.money(sheet.material()) + " of")
                        + " material on average; " + Say.minutes(sheet.longest())
                        + " on the longest branch drawn here.",
                "All counted, work, parts and what a fault that is left costs: "
                        + Say.money(sheet.expected()) + " on average if you follow the sheet, "
                        + Say.money(plan.now())
                        + (plan.decision().ofOffer()
                                ? " by " + plan.decision().now() + ". "
                                : " if nothing is done but to decide now (" + now + "). ")
                        + atMost(plan)
                        + against(plan));
    }

    private static String against(Plan plan) {
        return plan.decision().reckonedAgainst().map(a -> " " + a).orElse("");
    }

    private static String atMost(Plan plan) {
        return "At most " + Say.money(plan.atMost()) + " could be saved by knowing everything.";
    }

    /** @param drawn numbers of the stations that stand somewhere already */
    private static Twig twig(List<Sheet.Station> all, Sheet.Station station, Set<Integer> drawn) {
        List<Twig> twigs = new ArrayList<>();
        for (Sheet.Branch branch : station.branches()) {
            if (branch.way() instanceof Sheet.Way.Go go && drawn.add(go.station())) {
                twigs.add(twig(all, all.get(go.station() - 1), drawn));
            }
        }
        String chance = station.number() == 1 ? "" : Say.percent(station.chance());
        return new Twig(station.number(), station.confirmation().label(), chance, twigs);
    }

    private List<Row> ready(Sheet sheet) {
        Map<String, String> parts = sheet.parts().stream()
                .filter(p -> p.chance() >= Sheet.LEAST_CHANCE)
                .collect(Collectors.toMap(
                        p -> Say.percent(p.chance()), BenchWriter::part, (a, b) -> a + "; " + b, LinkedHashMap::new));
        List<Row> ready = new ArrayList<>();
        parts.forEach((chance, labels) -> ready.add(Row.of(chance, labels)));
        if (!bench.tools().isEmpty()) {
            ready.add(Row.of("tools", bench.tools().stream().map(Tool::label).collect(Collectors.joining("; "))));
        }
        String material = Stream.concat(
                        sheet.stations().stream()
                                .flatMap(s -> s.opens().stream())
                                .distinct()
                                .filter(a -> a.cost().signum() > 0)
                                .map(a -> material(a)),
                        sheet.stations().stream()
                                .map(Sheet.Station::confirmation)
                                .distinct()
                                .filter(c -> c.cost().signum() > 0)
                                .map(c -> "\"" + c.label() + "\" " + amount(c.cost())))
                .collect(Collectors.joining("; "));
        if (!material.isEmpty()) {
            ready.add(Row.of("used", material));
        }
        return ready;
    }

    private static String part(Sheet.Needed needed) {
        return needed.part().label() + " (" + needed.part().id() + ") "
                + needed.price().map(p -> "from " + Say.money(p)).orElse("without an offer");
    }

    private String material(Access opening) {
        return "opening, " + opening.label() + ", " + amount(opening.cost());
    }

    private String amount(BigDecimal amount) {
        return amount.toPlainString() + " " + rules.bench().currency();
    }

    private List<Row> questions() {
        return assessment.tryFirst().stream()
                .map(s -> Row.of(s.confirmation().label(), s.confirmation().how()))
                .toList();
    }

    private static List<String> notes(Sheet sheet, Plan plan) {
        List<String> notes = new ArrayList<>();
        notes.add("Estimated from " + sheet.phones() + " phones drawn from what is known"
                + (plan.error().isPositive()
                        ? "; the cost of " + plan.decision().now() + " is right to about " + Say.money(plan.error())
                        : "")
                + ". The same case gives the same sheet.");
        if (!sheet.stations().isEmpty()) {
            notes.add(
                    0,
                    "Per cent count phones like this one: of 100, so many go that way. Where it says ask again, fewer"
                            + " than " + Math.round(100 * Sheet.LEAST_CHANCE)
                            + " of 100 show any one of the outcomes: record what you see and print a new sheet.");
        }
        return notes;
    }
}
