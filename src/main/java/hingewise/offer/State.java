package hingewise.offer;

import java.util.List;

/** What may be known when a route is chosen, and what can be done then. */
final class State {
    private final double[] chances;
    private final List<Choice> choices;
    private final long spent;
    private final double[] kept;
    private final double[] refunded;

    /**
     * @param chances the chance that this is known and the phone is in each way it may be; over all states of a deal they
     *     sum to 1
     * @param choices what can be done then; the first of equals is taken
     * @param spent what it cost to know it
     */
    State(double[] chances, List<Choice> choices, long spent) {
        this.chances = chances;
        this.choices = List.copyOf(choices);
        this.spent = spent;
        this.kept = new double[choices.size()];
        this.refunded = new double[choices.size()];
        for (int c = 0; c < kept.length; c++) {
            long[] proceeds = choices.get(c).proceeds();
            double sum = 0;
            for (int w = 0; w < chances.length; w++) {
                sum += chances[w] * (proceeds[w] - spent);
            }
            kept[c] = sum;
            refunded[c] = choices.get(c).refunded().stream()
                    .mapToDouble(w -> chances[w])
                    .sum();
        }
    }

    /** What is known without spending anything. */
    State(double[] chances, List<Choice> choices) {
        this(chances, choices, 0);
    }

    double[] chances() {
        return chances;
    }

    List<Choice> choices() {
        return choices;
    }

    long spent() {
        return spent;
    }

    /** The choice with the highest expected proceeds if this price was paid. */
    Choice best(long price) {
        return choices.get(indexOfBest(price));
    }

    /** Sum of chance times what the best choice brings less what was spent, the price given back where it is. */
    double expected(long price) {
        return expected(indexOfBest(price), price);
    }

    private double expected(int choice, long price) {
        return kept[choice] + refunded[choice] * price;
    }

    private int indexOfBest(long price) {
        int best = 0;
        for (int c = 1; c < kept.length; c++) {
            best = expected(c, price) > expected(best, price) ? c : best;
        }
        return best;
    }

    /** The chance that this is known and the best choice leaves less than the phone cost. */
    double below(long price, long outlay) {
        Choice choice = best(price);
        double sum = 0;
        for (int w = 0; w < chances.length; w++) {
            if (chances[w] > 0 && choice.at(w, price) - spent < outlay) {
                sum += chances[w];
            }
        }
        return sum;
    }
}
