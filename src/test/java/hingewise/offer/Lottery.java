package hingewise.offer;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** Textbook decisions, put as deals. */
final class Lottery {
    private Lottery() {}

    /** Nothing is known but the chances of the ways. */
    static Deal uninformed(double[] prior, Choice... choices) {
        return deal(List.of(new State(prior, List.of(choices))));
    }

    /**
     * A report is heard first.
     *
     * @param reports for each report, its chance in each way
     * @param price what the report costs
     */
    static Deal informed(double[] prior, double[][] reports, long price, Choice... choices) {
        List<State> states = new ArrayList<>();
        for (double[] report : reports) {
            double[] chances = prior.clone();
            for (int w = 0; w < chances.length; w++) {
                chances[w] *= report[w];
            }
            states.add(new State(chances, List.of(choices), price));
        }
        return deal(states);
    }

    static Deal deal(List<State> states) {
        return new Deal(states, BigDecimal.ZERO, 0, 0);
    }
}
