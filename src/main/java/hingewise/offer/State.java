package hingewise.offer;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * What may be known when a route is chosen.
 *
 * @param chances the chance that this is known and the phone is in each way it may be; over all states of a deal they
 *     sum to 1
 * @param choices what can be done then; the first of equals is taken
 * @param spent what it cost to know it
 */
record State(double[] chances, List<Choice> choices, long spent) {
    State {
        choices = List.copyOf(choices);
    }

    /** What is known without spending anything. */
    State(double[] chances, List<Choice> choices) {
        this(chances, choices, 0);
    }

    /** The choice with the highest expected proceeds if this price was paid. */
    Choice best(long price) {
        return choices.stream()
                .max(Comparator.comparingDouble((Choice c) -> expected(c, price)))
                .orElseThrow();
    }

    /** Sum of chance times proceeds less what was spent, the price of the phone given back where it is. */
    double expected(Choice choice, long price) {
        double sum = 0;
        for (int w = 0; w < chances.length; w++) {
            if (chances[w] > 0) {
                sum += chances[w] * (choice.at(w, price) - spent);
            }
        }
        return sum;
    }

    /** The chance that this is known and less is left than the phone cost. */
    double below(Choice choice, long price, long outlay) {
        double sum = 0;
        for (int w = 0; w < chances.length; w++) {
            if (choice.at(w, price) - spent < outlay) {
                sum += chances[w];
            }
        }
        return sum;
    }

    /** A state for each way the phone may be: what perfect information would be. */
    Stream<State> apart() {
        return IntStream.range(0, chances.length)
                .filter(w -> chances[w] > 0)
                .mapToObj(w -> new State(
                        new double[] {chances[w]},
                        choices.stream().map(c -> c.only(w)).toList(),
                        spent));
    }
}
