package hingewise.costing;

import hingewise.casefile.Phone;
import hingewise.rulebook.Access;
import hingewise.rulebook.Part;
import hingewise.rulebook.RuleBook;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** Prices of parts and of the bench's time, for one family. */
public final class RepairCosts {
    private static final BigDecimal MINUTES_PER_HOUR = BigDecimal.valueOf(60);

    private final RuleBook rules;
    private final Shop shop;
    private final Phone phone;
    private final Optional<Shop.Model> model;
    private final Map<String, List<Offer>> offers = new HashMap<>();

    /**
     * Prices for a phone of which only the family is known.
     *
     * @throws MixedCurrencyException if a price is in a currency for which the shop has no rate
     */
    public RepairCosts(RuleBook rules, PriceBook prices, Shop shop, String family) {
        this(rules, prices, shop, new Phone(family, ""));
    }

    /** @throws MixedCurrencyException if a price is in a currency for which the shop has no rate */
    public RepairCosts(RuleBook rules, PriceBook prices, Shop shop, Phone phone) {
        this.rules = rules;
        this.shop = shop;
        this.phone = phone;
        this.model = shop.model(phone);
        Map<String, List<Offer>> all = new HashMap<>();
        for (Offer offer : prices.offers()) {
            Offer own = offer.at(shop.in(offer.price()));
            if (offer.limits().allow(phone)
                    && !shop.refused().getOrDefault(offer.part(), Set.of()).contains(offer.grade())) {
                all.computeIfAbsent(offer.part(), p -> new ArrayList<>()).add(own);
            }
        }
        all.forEach((part, some) -> offers.put(part, worthAsking(some)));
    }

    /** Without those that another, from a supplier without terms, beats in price, days, risk and origin alike. */
    private List<Offer> worthAsking(List<Offer> some) {
        List<Offer> sorted =
                some.stream().sorted(Comparator.comparing(Offer::goods)).toList();
        List<Offer> free = new ArrayList<>();
        List<Offer> kept = new ArrayList<>();
        for (Offer offer : sorted) {
            if (free.stream()
                    .noneMatch(f -> f.days() <= offer.days()
                            && f.badOnArrival() <= offer.badOnArrival()
                            && lessResale(f).compareTo(lessResale(offer)) <= 0)) {
                kept.add(offer);
                if (!shop.suppliers().containsKey(offer.supplier())) {
                    free.add(offer);
                }
            }
        }
        return some.stream().filter(kept::contains).toList();
    }

    /** The shop's own figures. */
    public Shop shop() {
        return shop;
    }

    /** The family these costs are for. */
    public String family() {
        return phone.family();
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

    /** The part of this id. */
    public Optional<Part> part(String id) {
        return Optional.ofNullable(rules.parts().get(id));
    }

    /** The parts of this family that renew a component. */
    public List<Part> partsRenewing(String component) {
        return rules.parts().values().stream()
                .filter(p -> p.families().contains(phone.family()) && p.renews().contains(component))
                .toList();
    }

    /** What may be lost by ordering this now and by waiting, if it is needed with this chance. */
    Regret regret(Optional<Offer> offer, Money goods, double chance) {
        Money again = offer.map(o -> shop.suppliers().get(o.supplier()))
                .map(Shop.Supplier::shipping)
                .orElse(Money.zero(shop.currency()));
        Money wait = perDay().multipliedBy(offer.map(Offer::days).orElse(0)).plus(again);
        return new Regret(
                goods.multipliedBy(Math.max(0, 1 - chance), RoundingMode.HALF_EVEN),
                wait.multipliedBy(chance, RoundingMode.HALF_EVEN));
    }

    /** The offers of a part that may be taken for this phone. */
    public List<Offer> offers(String part) {
        return offers.getOrDefault(part, List.of());
    }

    /** The cheapest offer of a part. */
    public Optional<Offer> offer(String part) {
        return offers(part).stream().min(Comparator.comparing(Offer::goods));
    }

    /** What phones like this bring; empty if the shop does not say. */
    public Optional<Shop.Model> model() {
        return model;
    }

    /** What a day takes off the price of this phone; nothing where the shop does not say what it brings. */
    public Money perDay() {
        return share(shop.selling().lossPerDay());
    }

    /** What a part that may arrive bad is expected to cost: sending it back, and waiting for another. */
    public Money risk(Offer offer) {
        return shop.badPart()
                .plus(perDay().multipliedBy(offer.days()))
                .multipliedBy(offer.badOnArrival(), RoundingMode.HALF_EVEN);
    }

    /** What buyers pay less for the phone because of where this part comes from, fees taken off. */
    public Money lessResale(Offer offer) {
        BigDecimal less = shop.condition()
                .origin()
                .getOrDefault(offer.part(), Map.of())
                .getOrDefault(offer.grade(), BigDecimal.ZERO);
        return share(less.multiply(BigDecimal.ONE.subtract(shop.selling().fee())));
    }

    /** What buyers pay less for the phone because a fault of this component is left and stated, fees taken off. */
    public Money lessLeft(String component) {
        return share(shop.condition()
                .leaving(component)
                .multiply(BigDecimal.ONE.subtract(shop.selling().fee())));
    }

    /** What one step of opening costs, labour and consumables. */
    public Money opening(Access step) {
        return money(step.cost()).plus(labour(step.minutes()));
    }

    private Money share(BigDecimal share) {
        return model.map(m -> m.resale().multipliedBy(share, RoundingMode.HALF_EVEN))
                .orElse(Money.zero(shop.currency()));
    }

    /** What buying and fitting these costs together. */
    Purchase purchase(List<Purchase.Line> lines, Set<String> open) {
        List<Offer> taken = lines.stream().flatMap(l -> l.offer().stream()).toList();
        Money nothing = Money.zero(shop.currency());
        Map<String, Money> bills = new LinkedHashMap<>();
        taken.forEach(o -> bills.merge(o.supplier(), o.goods(), Money::plus));
        Money goods = bills.values().stream().reduce(nothing, Money::plus);
        Money sending = nothing;
        for (Map.Entry<String, Money> bill : bills.entrySet()) {
            Shop.Supplier terms = shop.suppliers().get(bill.getKey());
            if (terms != null) {
                Money less = terms.minimumOrder().minus(bill.getValue());
                sending = sending.plus(terms.shipping()).plus(less.isPositive() ? less : nothing);
            }
        }
        Money work = Stream.concat(
                        lines.stream().map(l -> labour(l.part().minutes())),
                        lines.stream()
                                .flatMap(l -> stepsTo(l.part().access(), open).stream())
                                .distinct()
                                .map(this::opening))
                .reduce(nothing, Money::plus);
        int days = taken.stream().mapToInt(Offer::days).max().orElse(0);
        return new Purchase(
                lines,
                goods,
                sending,
                taken.stream().map(this::risk).reduce(nothing, Money::plus),
                taken.stream().map(this::lessResale).reduce(nothing, Money::plus),
                work,
                perDay().multipliedBy(days),
                days);
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
                        .map(Offer::goods)
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
