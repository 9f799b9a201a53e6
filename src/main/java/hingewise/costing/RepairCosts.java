package hingewise.costing;

import hingewise.rulebook.Access;
import hingewise.rulebook.Part;
import hingewise.rulebook.RuleBook;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** Prices of parts and of the bench's time, for one family. */
public final class RepairCosts {
    private static final BigDecimal MINUTES_PER_HOUR = BigDecimal.valueOf(60);

    private final RuleBook rules;
    private final PriceBook prices;
    private final Shop shop;
    private final String family;

    /** @throws MixedCurrencyException if a price is in a currency for which the shop has no rate */
    public RepairCosts(RuleBook rules, PriceBook prices, Shop shop, String family) {
        this.rules = rules;
        this.prices = new PriceBook(
                prices.offers().stream().map(o -> o.at(shop.in(o.price()))).toList());
        this.shop = shop;
        this.family = family;
    }

    /** The shop's own figures. */
    public Shop shop() {
        return shop;
    }

    /** The family these costs are for. */
    public String family() {
        return family;
    }

    /** An amount of the rule book, which has its own currency, in the shop's. */
    public Money money(BigDecimal amount) {
        return shop.in(CurrencyUnit.of(rules.bench().currency()), amount);
    }

    /** An expected value in the shop's currency, rounded to its minor unit. */
    public Money expected(double amount) {
        return Money.of(shop.currency(), BigDecimal.valueOf(amount), RoundingMode.HALF_EVEN);
    }

    /** What this much work costs. */
    public Money labour(double minutes) {
        return shop.labourPerHour()
                .toBigMoney()
                .multipliedBy(BigDecimal.valueOf(minutes))
                .dividedBy(MINUTES_PER_HOUR, RoundingMode.HALF_EVEN)
                .toMoney(RoundingMode.HALF_EVEN);
    }

    /** What it costs when a repair leaves a fault behind. */
    public Money priceOfFailure() {
        return shop.priceOfFailure();
    }

    /** The steps of opening still to do to reach a state, outermost first. */
    public List<Access> stepsTo(Optional<String> access, Set<String> open) {
        return rules.pathTo(access).stream().filter(a -> !open.contains(a.id())).toList();
    }

    /** The parts of this family that renew a component. */
    public List<Part> partsRenewing(String component) {
        return rules.parts().values().stream()
                .filter(p -> p.families().contains(family) && p.renews().contains(component))
                .toList();
    }

    /** The cheapest offer of a part. */
    public Optional<Offer> offer(String part) {
        return prices.cheapest(part);
    }

    /** A part and all that must be bought with it, itself first. */
    public Set<Part> bundle(Part part) {
        Set<Part> bundle = new LinkedHashSet<>();
        gather(part, bundle);
        return bundle;
    }

    private void gather(Part part, Set<Part> bundle) {
        if (bundle.add(part)) {
            part.alongside().stream()
                    .flatMap(id -> Optional.ofNullable(rules.parts().get(id)).stream())
                    .forEach(p -> gather(p, bundle));
        }
    }

    /** Price of a part and of all that must be bought with it, as far as they have offers; empty if it has none. */
    public Optional<Money> bundlePrice(Part part) {
        return offer(part.id())
                .map(own -> bundle(part).stream()
                        .flatMap(p -> offer(p.id()).stream())
                        .map(Offer::price)
                        .reduce(Money.zero(shop.currency()), Money::plus));
    }

    /**
     * The least it costs to renew a component from a closed phone, opening and labour included; empty where no part
     * with an offer renews it.
     */
    public Optional<Money> toRenew(String component) {
        return partsRenewing(component).stream()
                .flatMap(p -> bundlePrice(p)
                        .map(m -> m.plus(labour(p.minutes()
                                + rules.pathTo(p.access()).stream()
                                        .mapToDouble(Access::minutes)
                                        .sum())))
                        .stream())
                .min(Comparator.naturalOrder());
    }
}
