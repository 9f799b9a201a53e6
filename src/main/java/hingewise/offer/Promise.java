package hingewise.offer;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.Stream;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * What a phone promises at any price: the figures of a {@link Deal}, but for rounding, made ready so that each price
 * costs next to nothing. In each state only the choice that brings most if the price stays paid can be best, and those
 * that give it back. For several threads at once.
 */
public final class Promise {
    private final CurrencyUnit currency;
    private final List<List<Lot>> states;
    private final BigDecimal importTax;
    private final long margin;
    private final double lossLimit;
    private final long highest;

    private Promise(CurrencyUnit currency, Deal deal, double lossLimit) {
        this.currency = currency;
        this.states = deal.states().stream().map(Promise::lots).toList();
        this.importTax = deal.importTax();
        this.margin = deal.margin();
        this.lossLimit = lossLimit;
        this.highest = deal.highest();
    }

    static Promise of(CurrencyUnit currency, Deal deal, double lossLimit) {
        return new Promise(currency, deal, lossLimit);
    }

    private static List<Lot> lots(State state) {
        List<Choice> keeping =
                state.choices().stream().filter(c -> c.refunded().isEmpty()).toList();
        Choice best = new State(state.chances(), keeping, state.spent()).best(0);
        Stream<Choice> others =
                state.choices().stream().filter(c -> !c.refunded().isEmpty());
        return Stream.concat(Stream.of(best), others).map(c -> Lot.of(state, c)).toList();
    }

    /**
     * What buying at a price comes to.
     *
     * @param profit expected
     * @param spread standard deviation of the profit
     * @param lossChance chance that the profit is below 0, in 0–1
     */
    public record Outlook(Money profit, Money spread, double lossChance) {}

    /**
     * The outlook at a price, in the shop's currency.
     *
     * @param shippingIn paid for the phone to come
     */
    public Outlook at(Money price, Money shippingIn) {
        Figures figures = figures(price.getAmountMinorLong(), shippingIn.getAmountMinorLong());
        return new Outlook(
                money(figures.profit()), money(Math.sqrt(figures.variance())), Math.min(1, figures.lossChance()));
    }

    /** The most to pay by the shop's margin and its loss limit; empty where nothing is little enough. */
    public Optional<Money> ceiling(Money shippingIn) {
        long shipping = shippingIn.getAmountMinorLong();
        OptionalLong ceiling = Deal.largest(
                price -> {
                    Figures figures = figures(price, shipping);
                    return figures.profit() >= margin - Deal.ROUNDING
                            && figures.lossChance() <= lossLimit + Deal.ROUNDING;
                },
                highest);
        return ceiling.isPresent() ? Optional.of(Money.ofMinor(currency, ceiling.getAsLong())) : Optional.empty();
    }

    /** In minor units. */
    private record Figures(double profit, double variance, double lossChance) {}

    private Figures figures(long price, long shippingIn) {
        long outlay = Deal.spent(price, importTax, shippingIn);
        double expected = 0;
        double squares = 0;
        double below = 0;
        for (List<Lot> lots : states) {
            Lot best = best(lots, price);
            expected += best.expected(price);
            squares += best.squares(price);
            below += best.below(price, outlay);
        }
        return new Figures(expected - outlay, Math.max(0, squares - expected * expected), below);
    }

    private static Lot best(List<Lot> lots, long price) {
        Lot best = lots.get(0);
        for (Lot lot : lots) {
            best = lot.expected(price) > best.expected(price) ? lot : best;
        }
        return best;
    }

    private Money money(double minor) {
        return Money.of(
                currency, BigDecimal.valueOf(minor).movePointLeft(currency.getDecimalPlaces()), RoundingMode.HALF_EVEN);
    }
}
