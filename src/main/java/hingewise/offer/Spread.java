package hingewise.offer;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.stream.IntStream;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * How an amount scatters.
 *
 * @param expected its mean
 * @param low undercut in one of ten cases
 * @param middle undercut in half the cases
 * @param high undercut in nine of ten cases
 */
public record Spread(Money expected, Money low, Money middle, Money high) {
    /** @param amounts in minor units, with their chances */
    static Spread of(CurrencyUnit currency, long[] amounts, double[] chances) {
        int[] order = IntStream.range(0, amounts.length)
                .boxed()
                .sorted(Comparator.comparingLong(w -> amounts[w]))
                .mapToInt(Integer::intValue)
                .toArray();
        double mean = IntStream.range(0, amounts.length)
                .mapToDouble(w -> chances[w] * amounts[w])
                .sum();
        return new Spread(
                money(currency, mean),
                Money.ofMinor(currency, quantile(amounts, chances, order, .1)),
                Money.ofMinor(currency, quantile(amounts, chances, order, .5)),
                Money.ofMinor(currency, quantile(amounts, chances, order, .9)));
    }

    private static long quantile(long[] amounts, double[] chances, int[] order, double share) {
        double sum = 0;
        for (int w : order) {
            sum += chances[w];
            if (sum >= share) {
                return amounts[w];
            }
        }
        return amounts[order[order.length - 1]];
    }

    /** An expected amount of minor units, rounded. */
    static Money money(CurrencyUnit currency, double minor) {
        return Money.ofMinor(
                currency,
                BigDecimal.valueOf(minor).setScale(0, RoundingMode.HALF_EVEN).longValueExact());
    }
}
