package hingewise.planning;

import hingewise.rulebook.Access;
import hingewise.rulebook.Confirmation;
import hingewise.rulebook.Observation;
import hingewise.rulebook.Part;
import java.math.RoundingMode;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.joda.money.Money;

/**
 * A whole plan to work by: stations to do in turn, where each outcome leads, and the ends where to stop. Chances are
 * shares of all cases like this one, in 0–1, estimated from phones drawn from what is known.
 *
 * @param stations in the order a person reads them, numbered from 1; empty where nothing is worth doing before deciding
 * @param ends how it may end, in the order in which the stations lead there
 * @param minutes expected hands-on minutes until an end is reached, opening included; a branch
 *     counts as far as it is drawn
 * @param longest the same on the longest branch that is drawn
 * @param material expected money spent until then, labour and parts not included
 * @param expected what following it costs, all counted: work, parts, and what a fault that is left costs
 * @param parts what the ends would fit, the likeliest first
 * @param phones how many phones were drawn
 */
public record Sheet(
        List<Station> stations,
        List<End> ends,
        double minutes,
        double longest,
        Money material,
        Money expected,
        List<Needed> parts,
        int phones) {
    /**
     * Least chance of a branch that is drawn: of the phones drawn about a hundred take it, so that what is planned for
     * them is more than chance, and a sheet of more branches is not read.
     */
    public static final double LEAST_CHANCE = .05;

    public Sheet {
        stations = List.copyOf(stations);
        ends = List.copyOf(ends);
        parts = List.copyOf(parts);
    }

    /**
     * This sheet behind a look that stands before all else: what is seen otherwise leads nowhere.
     *
     * @param looks what to look at, with the answers on which to go on
     * @param goesOn chance of that, in 0–1
     * @param cost money spent on the look
     * @param whole what following the longer sheet costs, all counted
     */
    public Sheet after(Confirmation look, List<Need> looks, double goesOn, Money cost, Money whole) {
        Way next = stations.isEmpty()
                ? ends.isEmpty() ? new Way.AskAgain(Optional.empty()) : new Way.Stop(1)
                : new Way.Go(2);
        Map<String, Boolean> asNeeded = new LinkedHashMap<>();
        looks.forEach(n -> asNeeded.put(n.observation().id(), n.answer()));
        List<Map<String, Boolean>> all = List.of(Map.of());
        for (Need n : looks) {
            all = all.stream()
                    .flatMap(r -> Stream.of(n.answer(), !n.answer()).map(a -> {
                        Map<String, Boolean> longer = new LinkedHashMap<>(r);
                        longer.put(n.observation().id(), a);
                        return longer;
                    }))
                    .map(r -> (Map<String, Boolean>) r)
                    .toList();
        }
        Station first = new Station(
                1,
                look,
                1,
                look.minutes(),
                cost,
                List.of(),
                List.of(),
                looks.stream().map(Need::observation).toList(),
                List.of(
                        new Branch(goesOn, false, List.of(asNeeded), next),
                        new Branch(
                                1 - goesOn,
                                false,
                                all.stream().filter(r -> !r.equals(asNeeded)).toList(),
                                new Way.AskAgain(Optional.empty()))));
        return new Sheet(
                Stream.concat(Stream.of(first), stations.stream().map(s -> s.behind(goesOn)))
                        .toList(),
                ends.stream()
                        .map(e -> new End(e.number(), e.decision(), goesOn * e.chance()))
                        .toList(),
                look.minutes() + goesOn * minutes,
                look.minutes() + longest,
                cost.plus(material.multipliedBy(goesOn, RoundingMode.HALF_EVEN)),
                whole,
                parts.stream()
                        .map(p -> new Needed(p.part(), goesOn * p.chance(), p.price()))
                        .toList(),
                phones);
    }

    /**
     * Something to do.
     *
     * @param number from 1
     * @param chance of getting here
     * @param minutes hands-on minutes, opening and asking included
     * @param cost money spent on it, opening included, labour not
     * @param opens what is still closed on every way here and must be opened, outermost first
     * @param first what must be answered first
     * @param looks what to look at; of many those that tell most here
     * @param branches where it leads, the likeliest first and all that is too rare to be drawn last, as one; their chances
     *     add up to that of getting here
     */
    public record Station(
            int number,
            Confirmation confirmation,
            double chance,
            double minutes,
            Money cost,
            List<Access> opens,
            List<Need> first,
            List<Observation> looks,
            List<Branch> branches) {
        public Station {
            opens = List.copyOf(opens);
            first = List.copyOf(first);
            looks = List.copyOf(looks);
            branches = List.copyOf(branches);
        }

        /** The same with one more station before all others, from which so many come this way. */
        private Station behind(double share) {
            List<Branch> further = branches.stream()
                    .map(b -> new Branch(
                            share * b.chance(),
                            b.left(),
                            b.reports(),
                            b.way() instanceof Way.Go go ? new Way.Go(go.station() + 1) : b.way()))
                    .toList();
            return new Station(number + 1, confirmation, share * chance, minutes, cost, opens, first, looks, further);
        }
    }

    /**
     * An answer that must be had before a station is gone through.
     *
     * @param answer the answer with which it is
     */
    public record Need(Observation observation, boolean answer) {
        /**
         * Whether the other answer stops all work.
         *
         * @param stops whether "yes" to an observation does, by id
         */
        public boolean stopsWork(Predicate<String> stops) {
            return !answer && stops.test(observation.id());
        }
    }

    /**
     * What leads the same way.
     *
     * @param chance of taking it
     * @param left whether it is taken where the station is left because of what is answered first; alone, unless all of it
     *     is too rare to be drawn
     * @param reports each the answers by id of the observation
     */
    public record Branch(double chance, boolean left, List<Map<String, Boolean>> reports, Way way) {
        public Branch {
            reports = reports.stream()
                    .map(r -> Collections.unmodifiableMap(new LinkedHashMap<>(r)))
                    .toList();
        }

        /**
         * Whether it is taken only by what stops all work.
         *
         * @param first what is answered first at its station
         * @param stops whether "yes" to an observation stops all work, by id
         */
        public boolean stopsWork(List<Need> first, Predicate<String> stops) {
            return reports.isEmpty()
                    ? left && first.stream().allMatch(n -> n.stopsWork(stops))
                    : !left
                            && reports.stream()
                                    .allMatch(r -> r.entrySet().stream()
                                            .anyMatch(e -> e.getValue() && stops.test(e.getKey())));
        }
    }

    /** Where a branch leads. */
    public sealed interface Way {
        /** To the station of this number. */
        record Go(int station) implements Way {}

        /** To the end of this number, from 1. */
        record Stop(int end) implements Way {}

        /**
         * Record what is seen and ask again, for what would be planned is too rare to be drawn.
         *
         * @param next what would be done next, where only what follows it is too rare
         */
        record AskAgain(Optional<Confirmation> next) implements Way {}
    }

    /**
     * Where to stop.
     *
     * @param number from 1
     * @param chance of ending so, without what is too rare to be drawn
     */
    public record End(int number, Decision decision, double chance) {}

    /**
     * A part that may be fitted.
     *
     * @param chance that it is, branches that are not drawn counted by what would be decided there
     * @param price the cheapest; empty if nobody offers it
     */
    public record Needed(Part part, double chance, Optional<Money> price) {}
}
