package hingewise.offer;

import java.util.Arrays;
import java.util.Comparator;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/** What a choice brings in a state, summed and sorted. */
final class Lot {
    private final Sorted paid;
    private final Sorted refunded;

    private Lot(Sorted paid, Sorted refunded) {
        this.paid = paid;
        this.refunded = refunded;
    }

    static Lot of(State state, Choice choice) {
        return new Lot(
                Sorted.of(state, choice, way -> !choice.refunded().get(way)),
                Sorted.of(state, choice, choice.refunded()::get));
    }

    double expected(long price) {
        return paid.sum + refunded.sum + price * refunded.chance();
    }

    /** Sum of chance times square of what is left. */
    double squares(long price) {
        return paid.squares
                + refunded.squares
                + 2.0 * price * refunded.sum
                + (double) price * price * refunded.chance();
    }

    /** The chance that less is left than was spent. */
    double below(long price, long outlay) {
        return paid.below(outlay) + refunded.below(outlay - price);
    }

    /**
     * Amounts in rising order, each once.
     *
     * @param upTo the chance of each amount and of all below it
     */
    private record Sorted(long[] amounts, double[] upTo, double sum, double squares) {
        static Sorted of(State state, Choice choice, IntPredicate which) {
            double[] chances = state.chances();
            int[] ways = IntStream.range(0, chances.length)
                    .filter(w -> chances[w] > 0 && which.test(w))
                    .boxed()
                    .sorted(Comparator.comparingLong(w -> choice.proceeds()[w]))
                    .mapToInt(Integer::intValue)
                    .toArray();
            long[] amounts = new long[ways.length];
            double[] upTo = new double[ways.length];
            int count = 0;
            double chance = 0;
            double sum = 0;
            double squares = 0;
            for (int way : ways) {
                long left = choice.proceeds()[way] - state.spent();
                count += count > 0 && amounts[count - 1] == left ? 0 : 1;
                chance += chances[way];
                amounts[count - 1] = left;
                upTo[count - 1] = chance;
                sum += chances[way] * left;
                squares += chances[way] * left * left;
            }
            return new Sorted(Arrays.copyOf(amounts, count), Arrays.copyOf(upTo, count), sum, squares);
        }

        double chance() {
            return upTo.length == 0 ? 0 : upTo[upTo.length - 1];
        }

        double below(long limit) {
            int found = Arrays.binarySearch(amounts, limit);
            int first = found < 0 ? -found - 1 : found;
            return first == 0 ? 0 : upTo[first - 1];
        }
    }
}
