package hingewise.planning;

import hingewise.costing.Offer;
import hingewise.costing.RepairCosts;
import hingewise.decision.Policy;
import hingewise.rulebook.Access;
import hingewise.rulebook.Confirmation;
import hingewise.rulebook.Observation;
import hingewise.rulebook.Part;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import org.joda.money.Money;

/** Puts a policy down as a sheet. A station after which nothing is drawn is named where it is led to, but for the first. */
final class SheetMaker {
    private final CaseProblem problem;
    private final RepairCosts costs;
    private final BiFunction<Integer, Map<String, Boolean>, Decision> decisions;
    private final Places places;
    private final List<Integer> stations = new ArrayList<>();
    private final List<Integer> ends = new ArrayList<>();
    private final Map<Part, Double> fitted = new LinkedHashMap<>();

    private SheetMaker(
            CaseProblem problem, RepairCosts costs, BiFunction<Integer, Map<String, Boolean>, Decision> decisions) {
        this.problem = problem;
        this.costs = costs;
        this.decisions = decisions;
        this.places = new Places((end, seen) -> decisions.apply(end.ending(), answers(seen)));
    }

    /**
     * @param decisions what each ending comes to, by number, with what was seen until then
     * @param phones how many the policy was planned with
     */
    static Sheet sheet(
            CaseProblem problem,
            RepairCosts costs,
            BiFunction<Integer, Map<String, Boolean>, Decision> decisions,
            int phones,
            Policy policy) {
        return new SheetMaker(problem, costs, decisions).sheet(phones, policy);
    }

    private Sheet sheet(int phones, Policy policy) {
        int start = places.add(policy);
        if (start != Places.NOWHERE) {
            number(start);
        }
        fit(policy);
        List<Sheet.Station> drawn = stations.stream().map(this::station).toList();
        return new Sheet(
                drawn,
                ends.stream().map(this::end).toList(),
                drawn.stream().mapToDouble(SheetMaker::spent).sum(),
                drawn.isEmpty() ? 0 : longest(drawn, 1),
                costs.expected(drawn.stream()
                        .mapToDouble(s ->
                                (s.chance() - left(s)) * s.cost().getAmount().doubleValue())
                        .sum()),
                costs.expected(policy.expected()),
                needed(),
                phones);
    }

    /** Numbers places as they are read: each way to its end before the next, the likeliest first. */
    private void number(int place) {
        List<Integer> numbered = places.policy(place) instanceof Policy.Do ? stations : ends;
        if (!numbered.contains(place)) {
            numbered.add(place);
            places.ways(place).stream()
                    .map(w -> w.get(0).to())
                    .filter(to -> to != Places.NOWHERE && !places.leadsNowhere(to))
                    .forEach(this::number);
        }
    }

    private Sheet.Station station(int place) {
        Policy.Do act = (Policy.Do) places.policy(place);
        Confirmation c = problem.confirmation(act.act());
        List<Access> opens = problem.gates(act.opens());
        List<Sheet.Need> first = problem.asking().needs(c);
        List<List<Places.Way>> ways = places.ways(place);
        List<Observation> looks = ways.stream()
                .flatMap(List::stream)
                .flatMap(w -> w.report().stream())
                .findFirst()
                .map(r -> r.keySet().stream().map(problem::sign).toList())
                .orElse(List.of());
        return new Sheet.Station(
                stations.indexOf(place) + 1,
                c,
                places.chance(place),
                c.minutes() + opens.stream().mapToDouble(Access::minutes).sum() + asking(first),
                opens.stream().map(Access::cost).map(costs::money).reduce(costs.money(c.cost()), Money::plus),
                opens,
                first,
                looks,
                ways.stream().map(this::branch).toList());
    }

    private Sheet.Branch branch(List<Places.Way> ways) {
        return new Sheet.Branch(
                Places.sum(ways),
                ways.stream().anyMatch(w -> w.report().isEmpty()),
                ways.stream()
                        .flatMap(w -> w.report().stream())
                        .map(this::answers)
                        .toList(),
                way(ways.get(0).to()));
    }

    private Sheet.Way way(int to) {
        if (to == Places.NOWHERE) {
            return new Sheet.Way.AskAgain(Optional.empty());
        }
        if (stations.contains(to)) {
            return new Sheet.Way.Go(stations.indexOf(to) + 1);
        }
        return places.policy(to) instanceof Policy.Do act
                ? new Sheet.Way.AskAgain(Optional.of(problem.confirmation(act.act())))
                : new Sheet.Way.Stop(ends.indexOf(to) + 1);
    }

    private Map<String, Boolean> answers(Map<Integer, Boolean> report) {
        Map<String, Boolean> answers = new LinkedHashMap<>();
        report.forEach((sign, yes) -> answers.put(problem.sign(sign).id(), yes));
        return answers;
    }

    private Sheet.End end(int place) {
        return new Sheet.End(ends.indexOf(place) + 1, places.decision(place), places.chance(place));
    }

    private static double asking(List<Sheet.Need> first) {
        return first.size() * CaseProblem.ASKING_MINUTES;
    }

    /** The chance that a station is left because of what is answered first, as far as it is drawn. */
    private static double left(Sheet.Station station) {
        return station.branches().stream()
                .filter(b -> b.left() && b.reports().isEmpty())
                .mapToDouble(Sheet.Branch::chance)
                .sum();
    }

    private static double spent(Sheet.Station station) {
        return station.chance() * station.minutes() - left(station) * (station.minutes() - asking(station.first()));
    }

    private static double longest(List<Sheet.Station> drawn, int number) {
        Sheet.Station station = drawn.get(number - 1);
        return station.branches().stream()
                .mapToDouble(b -> (b.left() && b.reports().isEmpty() ? asking(station.first()) : station.minutes())
                        + (b.way() instanceof Sheet.Way.Go go ? longest(drawn, go.station()) : 0))
                .max()
                .orElse(0);
    }

    /** Counts what would be fitted, with what is decided where nothing is planned. */
    private void fit(Policy policy) {
        if (policy instanceof Policy.Do act) {
            act.branches().forEach(b -> fit(b.next()));
            return;
        }
        int ending = policy instanceof Policy.Decide end ? end.ending() : ((Policy.Unplanned) policy).ending();
        decisions.apply(ending, Map.of()).parts().forEach(p -> fitted.merge(p, policy.chance(), Double::sum));
    }

    private List<Sheet.Needed> needed() {
        return fitted.entrySet().stream()
                .map(e -> new Sheet.Needed(
                        e.getKey(), e.getValue(), costs.offer(e.getKey().id()).map(Offer::goods)))
                .sorted(Comparator.comparingDouble(Sheet.Needed::chance)
                        .reversed()
                        .thenComparing(n -> n.part().id()))
                .collect(Collectors.toList());
    }
}
