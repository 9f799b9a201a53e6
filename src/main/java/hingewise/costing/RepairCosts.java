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
    private final String family;
    private final CurrencyUnit currency;

    /** @throws MixedCurrencyException if an offer is in another currency than the bench's figures */
    public RepairCosts(RuleBook rules, PriceBook prices, String family) {
        this.rules = rules;
        this.prices = prices;
        this.family = family;
        this.currency = CurrencyUnit.of(rules.bench().currency());
        for (Offer offer : prices.offers()) {
            if (!offer.price().getCurrencyUnit().equals(currency)) {
                throw new MixedCurrencyException(offer, currency);
            }
        }
    }

    /** The family these costs are for. */
    public String family() {
        return family;
    }

    /** An exact amount in the bench's currency. */
    public Money money(BigDecimal amount) {
        return Money.of(currency, amount, RoundingMode.HALF_EVEN);
    }

    /** An expected value, rounded to the currency's minor unit. */
    public Money expected(double amount) {
        return money(BigDecimal.valueOf(amount));
    }

    /** What this much work costs. */
    public Money labour(double minutes) {
        return money(rules.bench()
                .labourPerHour()
                .multiply(BigDecimal.valueOf(minutes))
                .divide(MINUTES_PER_HOUR, 6, RoundingMode.HALF_EVEN));
    }

    /** What it costs when a repair leaves a fault behind. */
    public Money priceOfFailure() {
        return money(rules.bench().priceOfFailure());
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
                        .reduce(money(BigDecimal.ZERO), Money::plus));
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
