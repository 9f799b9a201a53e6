package hingewise.offer;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * What will be known of a phone when its route is chosen.
 *
 * @param outcomes what may be found out
 * @param looks what is looked at for it, by label; none where the route is chosen at once
 */
record Knowledge(List<Outcome> outcomes, List<String> looks) {
    Knowledge {
        outcomes = List.copyOf(outcomes);
        looks = List.copyOf(looks);
    }

    /**
     * Something found out.
     *
     * @param chances the chance that it is found out and the phone is in each way it may be
     * @param spent what it cost, in minor units
     */
    record Outcome(double[] chances, long spent) {}

    /** Nothing but what is known now. */
    static Knowledge none(double[] chances) {
        return new Knowledge(List.of(new Outcome(chances, 0)), List.of());
    }

    /**
     * The same with a further look.
     *
     * @param yes the chance that it says yes, by way
     */
    Knowledge with(String look, double[] yes, long cost) {
        return new Knowledge(
                outcomes.stream()
                        .flatMap(o -> Stream.of(true, false)
                                .map(said -> new Outcome(
                                        IntStream.range(0, yes.length)
                                                .mapToDouble(w -> o.chances()[w] * (said ? yes[w] : 1 - yes[w]))
                                                .toArray(),
                                        o.spent() + cost)))
                        .toList(),
                Stream.concat(looks.stream(), Stream.of(look)).toList());
    }

    List<State> states(List<Choice> choices) {
        return outcomes.stream()
                .map(o -> new State(o.chances(), choices, o.spent()))
                .toList();
    }

    /** The same for some of the ways only, by their chances. */
    Knowledge among(double[] all, double[] some) {
        return new Knowledge(
                outcomes.stream()
                        .map(o -> new Outcome(
                                IntStream.range(0, all.length)
                                        .mapToDouble(w -> some[w] > 0 ? o.chances()[w] / all[w] * some[w] : 0)
                                        .toArray(),
                                o.spent()))
                        .toList(),
                looks);
    }
}
