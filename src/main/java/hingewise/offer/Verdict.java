package hingewise.offer;

import org.joda.money.Money;

/** The figures in a sentence or two. */
final class Verdict {
    private Verdict() {}

    static String of(Worth worth, Money margin) {
        if (worth.offerCeiling().isEmpty()) {
            return (worth.paid() ? "Paid " + text(worth.price()) + ", but even" : "Do not buy: even")
                    + " for nothing no route is expected to leave " + text(margin)
                    + " with a chance of loss of at most " + Math.round(100 * worth.lossLimit()) + " %.";
        }
        Money most = worth.offerCeiling().get();
        String best = worth.routes().stream()
                .filter(r -> r.route() != Route.NOTHING)
                .findFirst()
                .map(r -> " As things stand the best route is: " + r.route().label() + ".")
                .orElse("");
        if (worth.paid()) {
            return "Paid " + text(worth.price()) + "; the most to pay "
                    + (worth.price().isGreaterThan(most) ? "would have been " : "is ") + text(most) + "." + best
                    + counts(worth);
        }
        if (!worth.asked()) {
            return "Offer at most " + text(most) + "." + best + counts(worth);
        }
        return worth.price().isGreaterThan(most)
                ? "Do not buy at " + text(worth.price()) + ": offer at most " + text(most) + "." + counts(worth)
                : "Worth buying at " + text(worth.price()) + ", up to " + text(most) + "." + best + counts(worth);
    }

    private static String counts(Worth worth) {
        return worth.countsOn()
                .map(c -> " That counts on this before the route is chosen: " + c + ".")
                .orElse("");
    }

    private static String text(Money money) {
        return money.getAmount().toPlainString() + " " + money.getCurrencyUnit().getCode();
    }
}
