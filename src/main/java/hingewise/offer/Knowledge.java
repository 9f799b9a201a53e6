package hingewise.offer;

import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * What will be known of a phone when its route is chosen, and what will have been done to it by then.
 *
 * @param outcomes what may be found out
 * @param looks what is looked at on the desk for it, by label
 * @param sheet what is then done as the bench sheet says, by label, what is done in most cases first
 * @param benches how far work has gone where anything was done to the phone
 */
record Knowledge(List<Outcome> outcomes, List<String> looks, List<String> sheet, List<Bench> benches) {
    /** Nothing was done to the phone. */
    static final int UNTOUCHED = -1;

    Knowledge {
        outcomes = List.copyOf(outcomes);
        looks = List.copyOf(looks);
        sheet = List.copyOf(sheet);
        benches = List.copyOf(benches);
    }

    /**
     * Something found out.
     *
     * @param chances the chance that it is found out and the phone is in each way it may be
     * @param spent what it cost, in minor units
     * @param bench how far work has gone, a place in the list, or {@link #UNTOUCHED}
     */
    record Outcome(double[] chances, long spent, int bench) {}

    /** Nothing but what is known now. */
    static Knowledge none(double[] chances) {
        return new Knowledge(List.of(new Outcome(chances, 0, UNTOUCHED)), List.of(), List.of(), List.of());
    }

    /**
     * The same with a further look on the desk.
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
                                        o.spent() + cost,
                                        o.bench())))
                        .toList(),
                Stream.concat(looks.stream(), Stream.of(look)).toList(),
                sheet,
                benches);
    }

    /** The states it leads to where nothing is done to the phone. */
    List<State> states(List<Choice> choices) {
        return states(bench -> choices);
    }

    /** @param choices what can be done, by how far work has gone */
    List<State> states(IntFunction<List<Choice>> choices) {
        return outcomes.stream()
                .map(o -> new State(o.chances(), choices.apply(o.bench()), o.spent()))
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
                                o.spent(),
                                o.bench()))
                        .toList(),
                looks,
                sheet,
                benches);
    }
}
