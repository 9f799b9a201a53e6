package hingewise.offer;

import hingewise.costing.Offer;
import hingewise.costing.PriceBook;
import hingewise.costing.Purchase;
import hingewise.costing.Shop;
import hingewise.rulebook.Part;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import org.joda.money.Money;

/**
 * Which numbers move the most to pay, by expected profit and chance of loss together. One after the other is lowered and raised, everything else staying as it is and
 * routes and parts being chosen anew: the resale price by its spread, any other by a quarter, about as far as offers for
 * the same display lie apart (common practice, no source).
 */
final class Movers {
    private static final BigDecimal QUARTER = new BigDecimal(".25");
    private static final int PARTS = 4;

    private final Valuation.Subject subject;
    private final PriceBook prices;
    private final Shop shop;
    private final Shop.Model model;
    private final Knowledge knowledge;
    private final Map<Integer, List<List<Routes.Group>>> repairs;

    Movers(
            Valuation.Subject subject,
            PriceBook prices,
            Shop shop,
            Shop.Model model,
            Knowledge knowledge,
            Map<Integer, List<List<Routes.Group>>> repairs) {
        this.subject = subject;
        this.prices = prices;
        this.shop = shop;
        this.model = model;
        this.knowledge = knowledge;
        this.repairs = Map.copyOf(repairs);
    }

    /** Figures with one number changed. */
    private record Figures(PriceBook prices, Shop shop, Shop.Model model) {
        Figures with(Shop.Model other) {
            return new Figures(prices, shop.withModel(other), other);
        }

        Figures with(Shop other) {
            return new Figures(prices, other, model);
        }
    }

    private record Number(String name, BigDecimal change, Function<BigDecimal, Figures> changed) {}

    /** Those that move it at all, furthest first. */
    List<Mover> of(List<Purchase> bought) {
        Money now = ceiling(new Figures(prices, shop, model));
        return numbers(bought).stream()
                .map(n -> {
                    Money lower = ceiling(n.changed().apply(BigDecimal.ONE.subtract(n.change())));
                    Money higher = ceiling(n.changed().apply(BigDecimal.ONE.add(n.change())));
                    return new Mover(
                            n.name(), n.change().doubleValue(), lower, higher, sentence(n, now, lower, higher));
                })
                .filter(m -> m.swing().isPositive())
                .sorted(Comparator.comparing(Mover::swing).reversed().thenComparing(Mover::number))
                .toList();
    }

    private static String sentence(Number n, Money now, Money lower, Money higher) {
        return String.format(
                Locale.ROOT,
                "If the %s were %.0f %% higher, the most to pay would be %s instead of %s; if it were"
                        + " as much lower, %s.",
                n.name(),
                100 * n.change().doubleValue(),
                text(higher),
                text(now),
                text(lower));
    }

    private static String text(Money money) {
        return money.getAmount().toPlainString() + " " + money.getCurrencyUnit().getCode();
    }

    private Money ceiling(Figures figures) {
        Valuation valuation = subject.at(figures.prices(), figures.shop(), figures.model(), repairs);
        return Money.ofMinor(
                shop.currency(),
                valuation
                        .deal(knowledge)
                        .ceiling(shop.buying().lossLimit().doubleValue())
                        .orElse(0));
    }

    private List<Number> numbers(List<Purchase> bought) {
        Figures base = new Figures(prices, shop, model);
        List<Number> numbers = new ArrayList<>();
        dearest(bought)
                .forEach((id, label) -> numbers.add(new Number(
                        "price of the " + label, QUARTER, f -> new Figures(prices.scaled(id, f), shop, model))));
        numbers.add(new Number(
                "resale price",
                model.spread(),
                f -> base.with(model.at(times(model.resale(), f), model.asIs(), model.salvage(), model.service()))));
        numbers.add(new Number(
                "price as it is",
                QUARTER,
                f -> base.with(model.at(model.resale(), times(model.asIs(), f), model.salvage(), model.service()))));
        numbers.add(new Number(
                "prices of its parts when broken up",
                QUARTER,
                f -> base.with(model.at(model.resale(), model.asIs(), times(model.salvage(), f), model.service()))));
        model.service()
                .ifPresent(s -> numbers.add(new Number(
                        "maker's quote",
                        QUARTER,
                        f -> base.with(model.at(
                                model.resale(),
                                model.asIs(),
                                model.salvage(),
                                model.service().map(q -> q.at(times(q.quote(), f))))))));
        numbers.add(new Number(
                "labour rate", QUARTER, f -> base.with(shop.withLabour(times(shop.labourPerHour(), f)))));
        numbers.add(new Number(
                "price of a failure",
                QUARTER,
                f -> base.with(shop.withPriceOfFailure(times(shop.priceOfFailure(), f)))));
        Shop.Selling s = shop.selling();
        numbers.add(new Number(
                "selling fee",
                QUARTER,
                f -> base.with(shop.withSelling(new Shop.Selling(
                        s.fee().multiply(f),
                        s.shippingOut(),
                        s.days(),
                        s.lossPerDay(),
                        s.returnRate(),
                        s.returnCost(),
                        s.reserve())))));
        numbers.add(new Number(
                "loss of value a day",
                QUARTER,
                f -> base.with(shop.withSelling(new Shop.Selling(
                        s.fee(),
                        s.shippingOut(),
                        s.days(),
                        s.lossPerDay().multiply(f),
                        s.returnRate(),
                        s.returnCost(),
                        s.reserve())))));
        return numbers;
    }

    /** The dearest parts that any of the repairs buys, by id with their labels. */
    private static Map<String, String> dearest(List<Purchase> bought) {
        Map<String, String> labels = new LinkedHashMap<>();
        bought.stream()
                .flatMap(p -> p.lines().stream())
                .filter(l -> l.offer().isPresent() && l.part().form() != Part.Form.CONSUMABLE)
                .sorted(Comparator.comparing(
                                (Purchase.Line l) -> l.offer().map(Offer::goods).orElseThrow())
                        .reversed())
                .forEach(l -> {
                    if (labels.size() < PARTS) {
                        labels.putIfAbsent(l.part().id(), l.part().label());
                    }
                });
        return labels;
    }

    private static Money times(Money money, BigDecimal factor) {
        return money.multipliedBy(factor, RoundingMode.HALF_EVEN);
    }

    private static Map<String, Money> times(Map<String, Money> amounts, BigDecimal factor) {
        Map<String, Money> scaled = new LinkedHashMap<>();
        amounts.forEach((part, amount) -> scaled.put(part, times(amount, factor)));
        return scaled;
    }
}
