package hingewise.intake.sheet;

import java.math.BigDecimal;
import java.math.MathContext;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** Sums over a sheet, exact, so that neither the order nor the number of rows matters. */
final class Moments {
    private static final BigDecimal DOUBT_SQUARED = Shrinkage.DOUBT.multiply(Shrinkage.DOUBT);

    private final CurrencyUnit currency;
    private long count;
    private BigDecimal sum = BigDecimal.ZERO;
    private BigDecimal squares = BigDecimal.ZERO;
    private BigDecimal spreads = BigDecimal.ZERO;

    Moments(CurrencyUnit currency) {
        this.currency = currency;
    }

    void add(Money profit, Money spread) {
        count++;
        sum = sum.add(profit.getAmount());
        squares = squares.add(profit.getAmount().pow(2));
        spreads = spreads.add(spread.getAmount().pow(2));
    }

    Shrinkage shrinkage() {
        if (count < Shrinkage.FEWEST) {
            return new Shrinkage(currency, count, BigDecimal.ZERO, BigDecimal.ZERO);
        }
        BigDecimal n = BigDecimal.valueOf(count);
        BigDecimal mean = sum.divide(n, MathContext.DECIMAL64);
        BigDecimal variance = squares.multiply(n)
                .subtract(sum.pow(2))
                .divide(n.multiply(n.subtract(BigDecimal.ONE)), MathContext.DECIMAL64);
        BigDecimal error = spreads.multiply(DOUBT_SQUARED).divide(n, MathContext.DECIMAL64);
        return new Shrinkage(currency, count, mean, variance.subtract(error).max(BigDecimal.ZERO));
    }
}
