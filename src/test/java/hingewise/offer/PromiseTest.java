package hingewise.offer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Random;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

class PromiseTest {
    private static final double LIMIT = .3;
    private static final long SHIPPING = 650;

    private static Money eur(long cents) {
        return Money.ofMinor(CurrencyUnit.EUR, cents);
    }

    /** Some states and routes, one of which may give the price back. */
    private static Deal drawn(Random random) {
        int ways = 1 + random.nextInt(15);
        List<Choice> choices = new ArrayList<>();
        for (int c = 1 + random.nextInt(5); c > 0; c--) {
            choices.add(new Choice("route " + c, proceeds(random, ways)));
        }
        if (random.nextBoolean()) {
            BitSet refunded = new BitSet();
            for (int w = 0; w < ways; w++) {
                refunded.set(w, random.nextInt(4) > 0);
            }
            choices.add(new Choice("return", proceeds(random, ways), refunded));
        }
        double[][] chances = new double[1 + random.nextInt(4)][ways];
        double sum = 0;
        for (double[] state : chances) {
            for (int w = 0; w < ways; w++) {
                state[w] = w > 0 && random.nextInt(5) == 0 ? 0 : random.nextDouble();
                sum += state[w];
            }
        }
        List<State> states = new ArrayList<>();
        for (double[] state : chances) {
            for (int w = 0; w < ways; w++) {
                state[w] /= sum;
            }
            states.add(new State(state, choices, random.nextInt(500)));
        }
        BigDecimal tax = random.nextBoolean() ? BigDecimal.ZERO : new BigDecimal(".19");
        return new Deal(states, tax, SHIPPING, 1_000);
    }

    private static long[] proceeds(Random random, int ways) {
        return random.longs(ways, -5_000, 50_000).map(p -> p / 1_000 * 1_000).toArray();
    }

    @Test
    void aPromiseSaysOfEveryPriceWhatTheDealSays() {
        for (int seed = 1; seed <= 300; seed++) {
            Random random = new Random(seed);
            Deal deal = drawn(random);
            Promise promise = Promise.of(CurrencyUnit.EUR, deal, LIMIT);
            for (int i = 0; i < 10; i++) {
                // Round prices meet the round proceeds, so that equal amounts are tried.
                long price = random.nextInt(40) * 1_000L - SHIPPING + (i % 3 == 0 ? 1 : 0);
                if (price >= 0) {
                    Promise.Outlook outlook = promise.at(eur(price), eur(SHIPPING));
                    assertThat(outlook.profit().getAmountMinorLong())
                            .as("profit, seed %d, price %d", seed, price)
                            .isCloseTo(Math.round(deal.profit(price)), within(1L));
                    assertThat(outlook.lossChance())
                            .as("loss, seed %d, price %d", seed, price)
                            .isCloseTo(deal.lossChance(price), within(1e-9));
                    assertThat(outlook.spread().getAmountMinorLong())
                            .as("spread, seed %d, price %d", seed, price)
                            .isCloseTo(Math.round(deviation(deal, price)), within(1L));
                }
            }
            OptionalLong ceiling = deal.ceiling(LIMIT);
            assertThat(promise.ceiling(eur(SHIPPING)))
                    .as("ceiling, seed %d", seed)
                    .isEqualTo(ceiling.isPresent() ? Optional.of(eur(ceiling.getAsLong())) : Optional.empty());
        }
    }

    /** Worked by enumeration of every state and way. */
    private static double deviation(Deal deal, long price) {
        double mean = deal.profit(price);
        double variance = 0;
        for (State state : deal.states()) {
            Choice best = state.best(price);
            for (int w = 0; w < state.chances().length; w++) {
                double off = best.at(w, price) - state.spent() - deal.spent(price) - mean;
                variance += state.chances()[w] * off * off;
            }
        }
        return Math.sqrt(variance);
    }

    @Test
    void dearerShippingLowersProfitAndCeilingByAsMuch() {
        Deal deal = new Deal(
                List.of(new State(new double[] {.75, .25}, List.of(new Choice("repair", 30_000, 10_000)))),
                BigDecimal.ZERO,
                0,
                2_000);
        Promise promise = Promise.of(CurrencyUnit.EUR, deal, LIMIT);
        assertThat(promise.ceiling(eur(0))).contains(eur(23_000));
        assertThat(promise.ceiling(eur(500))).contains(eur(22_500));
        assertThat(promise.at(eur(20_000), eur(500)).profit()).isEqualTo(eur(4_500));
        assertThat(promise.at(eur(20_000), eur(500)).lossChance()).isEqualTo(.25);
    }
}
