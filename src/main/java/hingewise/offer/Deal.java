package hingewise.offer;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalLong;
import java.util.function.LongPredicate;

/**
 * Buying a phone, with everything that may be known before its route is chosen. Let G be the net proceeds under the best
 * route in each state, which may give the price back; the most to pay is the largest price p at which E[G] − spent(p) is
 * at least the margin and P(G &lt; spent(p)) at most the loss limit. Amounts are in minor units.
 *
 * @param states what may be known
 * @param importTax share of the price paid on top
 * @param shippingIn paid for the phone to come
 * @param margin least expected profit
 */
record Deal(List<State> states, BigDecimal importTax, long shippingIn, long margin) {
    /** Sums of products of chances are off by less than this part of a minor unit. */
    static final double ROUNDING = 1e-6;

    Deal {
        states = List.copyOf(states);
    }

    /** What is spent until the phone is here. */
    long spent(long price) {
        return spent(price, importTax, shippingIn);
    }

    static long spent(long price, BigDecimal importTax, long shippingIn) {
        long tax = importTax
                .multiply(BigDecimal.valueOf(price))
                .setScale(0, RoundingMode.HALF_EVEN)
                .longValueExact();
        return Math.addExact(Math.addExact(price, tax), shippingIn);
    }

    /** Expected profit at a price. */
    double profit(long price) {
        return states.stream().mapToDouble(s -> s.expected(price)).sum() - spent(price);
    }

    /** Chance that less comes back than was spent, in 0–1. */
    double lossChance(long price) {
        long spent = spent(price);
        return states.stream().mapToDouble(s -> s.below(price, spent)).sum();
    }

    /** The most to pay by expected profit alone; empty where nothing is little enough. */
    OptionalLong ceiling() {
        return largest(this::profits);
    }

    /** The most to pay by expected profit and chance of loss; empty where nothing is little enough. */
    OptionalLong ceiling(double lossLimit) {
        return largest(p -> profits(p) && risks(p, lossLimit));
    }

    /** The most to pay by chance of loss alone; empty where nothing is little enough. */
    OptionalLong lossCeiling(double lossLimit) {
        return largest(p -> risks(p, lossLimit));
    }

    private boolean profits(long price) {
        return profit(price) >= margin - ROUNDING;
    }

    private boolean risks(long price, double limit) {
        return lossChance(price) <= limit + ROUNDING;
    }

    /**
     * By bisection: profit falls with the price, and so does in each state what a route brings beyond it, for the only
     * route that follows the price costs the shipping back.
     */
    private OptionalLong largest(LongPredicate acceptable) {
        return largest(acceptable, highest());
    }

    /** The most that any choice brings in any way. */
    long highest() {
        return states.stream()
                .flatMap(s -> s.choices().stream())
                .flatMapToLong(c -> Arrays.stream(c.proceeds()))
                .max()
                .orElse(0);
    }

    /** @param highest no price above it is acceptable */
    static OptionalLong largest(LongPredicate acceptable, long highest) {
        if (!acceptable.test(0)) {
            return OptionalLong.empty();
        }
        long low = 0;
        long high = highest + 1;
        while (high - low > 1) {
            long middle = low + (high - low) / 2;
            if (acceptable.test(middle)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return OptionalLong.of(low);
    }

    /** The same deal where it is known which way the phone is, of all that may be done in any of the states. */
    Deal withPerfectInformation() {
        return withPerfectInformation(List.of());
    }

    /**
     * The same deal where it is known which way the phone is: in each the best is done of all that may be done in any of
     * the states, what leads to it paid for, and of what may be done at once.
     */
    Deal withPerfectInformation(List<Choice> atOnce) {
        return new Deal(Perfect.states(states, atOnce), importTax, shippingIn, margin);
    }
}
