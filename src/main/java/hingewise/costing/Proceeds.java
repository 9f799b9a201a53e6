package hingewise.costing;

import hingewise.diagnosis.Readings;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Map;
import java.util.stream.Collectors;
import org.joda.money.Money;

/** What a phone brings by each way of parting with it, the seller's fee taken off; its own price is left out. */
public final class Proceeds {
    private final RepairCosts costs;
    private final Shop shop;
    private final Shop.Model model;
    private final BigDecimal marks;

    /**
     * @param model what such phones bring
     * @param readings marks that were seen take off the price of a working phone
     */
    public Proceeds(RepairCosts costs, Shop.Model model, Readings readings) {
        this.costs = costs;
        this.shop = costs.shop();
        this.model = model;
        this.marks = readings.latest().entrySet().stream()
                .filter(Map.Entry::getValue)
                .map(e -> shop.condition().marks().getOrDefault(e.getKey(), BigDecimal.ZERO))
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** What it brings if everything works. */
    public Money working(boolean opened) {
        BigDecimal off = opened ? marks.add(shop.condition().opened()) : marks;
        return afterFee(
                model.resale().multipliedBy(BigDecimal.ONE.subtract(off).max(BigDecimal.ZERO), RoundingMode.HALF_EVEN));
    }

    /** What selling a working one costs: sending, a reserve, phones that come back, the days until it is sold. */
    public Money selling() {
        return shop.selling()
                .shippingOut()
                .plus(shop.selling().reserve())
                .plus(shop.selling().returnCost().multipliedBy(shop.selling().returnRate(), RoundingMode.HALF_EVEN))
                .plus(costs.perDay().multipliedBy(shop.selling().days()));
    }

    /** What it brings sold with its faults. */
    public Money asIs() {
        return afterFee(model.asIs());
    }

    /** What a fault of each component takes off that, by component id. */
    public Map<String, Money> asIsLess() {
        return model.asIsLess().entrySet().stream()
                .collect(Collectors.toMap(Map.Entry::getKey, e -> afterFee(e.getValue())));
    }

    /** What selling it with its faults costs. */
    public Money sellingAsIs() {
        return shop.selling()
                .shippingOut()
                .plus(costs.perDay().multipliedBy(shop.selling().days()));
    }

    /** What each part brings of which nothing is broken, by part id. */
    public Map<String, Money> salvage() {
        return model.salvage().entrySet().stream()
                .collect(Collectors.toMap(Map.Entry::getKey, e -> afterFee(e.getValue())));
    }

    /** What taking it apart for its parts and selling them costs. */
    public Money breaking() {
        return costs.labour(model.stripMinutes()).plus(shop.selling().shippingOut());
    }

    /** An amount with the fee of selling taken off. */
    public Money afterFee(Money price) {
        return price.multipliedBy(BigDecimal.ONE.subtract(shop.selling().fee()), RoundingMode.HALF_EVEN);
    }
}
