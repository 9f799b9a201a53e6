package hingewise.costing;

import hingewise.casefile.Phone;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * The shop's own figures. Every amount is in its currency; a share is in 0–.999.
 *
 * @param rates what one unit of another currency is worth in the shop's
 * @param labourPerHour what an hour of work costs
 * @param priceOfFailure what it costs when a repair leaves a fault behind: a second round, a delay, a return
 * @param badPart what a part that arrives bad costs beside the waiting: testing it, sending it back
 * @param returns terms on which a seller takes a phone back; empty if never reckoned with
 * @param models what phones bring, the first that fits a phone counts
 * @param refused grades that are not bought, by part id
 * @param suppliers terms of the suppliers that have any, by name
 */
public record Shop(
        CurrencyUnit currency,
        Map<CurrencyUnit, BigDecimal> rates,
        Money labourPerHour,
        Money priceOfFailure,
        Money badPart,
        Buying buying,
        Optional<Returning> returns,
        Selling selling,
        Condition condition,
        List<Model> models,
        Map<String, Set<String>> refused,
        Map<String, Supplier> suppliers) {
    public Shop {
        rates = Map.copyOf(rates);
        models = List.copyOf(models);
        refused = Map.copyOf(refused);
        suppliers = Map.copyOf(suppliers);
    }

    /**
     * Buying phones.
     *
     * @param shippingIn paid for a phone to come
     * @param importTax share of the price paid on top
     * @param margin least profit that is wanted of a phone
     * @param lossLimit most chance that a phone ends in a loss, in .001–.999
     */
    public record Buying(Money shippingIn, BigDecimal importTax, Money margin, BigDecimal lossLimit) {
        /** What is spent at a price until the phone is here. */
        public Money spent(Money price) {
            return price.plus(price.multipliedBy(importTax, RoundingMode.HALF_EVEN))
                    .plus(shippingIn);
        }
    }

    /**
     * Giving a phone back to its seller, unopened.
     *
     * @param days after arrival within which it can be given back
     * @param shipping paid to send it
     * @param accepted chance that the seller takes it back
     */
    public record Returning(int days, Money shipping, BigDecimal accepted) {}

    /**
     * Selling phones.
     *
     * @param fee share of the price
     * @param shippingOut paid to send a phone
     * @param days from being ready until sold
     * @param lossPerDay share of the price that a day takes off
     * @param returnRate chance that a sold phone comes back
     * @param returnCost what that costs
     * @param reserve put aside for each phone
     */
    public record Selling(
            BigDecimal fee,
            Money shippingOut,
            int days,
            BigDecimal lossPerDay,
            BigDecimal returnRate,
            Money returnCost,
            Money reserve) {}

    /**
     * What takes off the price of a working phone; shares of it.
     *
     * @param opened for having been opened
     * @param marks for what is seen of it, by observation id
     * @param origin for parts that buyers ask about, by part id and grade id
     * @param left for a fault that is left and stated, by component id
     * @param leftOtherwise the same, for every other component
     */
    public record Condition(
            BigDecimal opened,
            Map<String, BigDecimal> marks,
            Map<String, Map<String, BigDecimal>> origin,
            Map<String, BigDecimal> left,
            BigDecimal leftOtherwise) {
        public Condition {
            marks = Map.copyOf(marks);
            origin = Map.copyOf(origin);
            left = Map.copyOf(left);
        }

        /** Share that a fault of this component takes off when it is left and stated. */
        public BigDecimal leaving(String component) {
            return left.getOrDefault(component, leftOtherwise);
        }
    }

    /**
     * What phones of a model bring.
     *
     * @param label words that the label of such a phone contains; empty for any phone of the family
     * @param resale price of one that works, has no marks and was never opened
     * @param spread standard deviation of that price, as a share of it
     * @param asIs price of a faulty one sold with an honest note
     * @param asIsLess what a fault of a component takes off that, by component id
     * @param salvage what a part brings if nothing it consists of is broken, by part id
     * @param stripMinutes to take one apart for its parts
     */
    public record Model(
            String id,
            String family,
            Optional<String> label,
            Money resale,
            BigDecimal spread,
            Money asIs,
            Map<String, Money> asIsLess,
            Map<String, Money> salvage,
            int stripMinutes,
            Optional<Service> service) {
        public Model {
            asIsLess = Map.copyOf(asIsLess);
            salvage = Map.copyOf(salvage);
        }

        /** The same model at other prices. */
        public Model at(Money working, Money faulty, Map<String, Money> parts, Optional<Service> quoted) {
            return new Model(id, family, label, working, spread, faulty, asIsLess, parts, stripMinutes, quoted);
        }
    }

    /**
     * The maker's repair at a fixed quote.
     *
     * @param renews ids of the components it puts right
     * @param shipping there and back
     * @param refusal paid when they refuse
     * @param refusesOpened chance that they refuse a phone that was opened here
     * @param refusesAfter chance that they refuse because of a history, by history id
     */
    public record Service(
            Money quote,
            Set<String> renews,
            int days,
            Money shipping,
            Money refusal,
            BigDecimal refusesOpened,
            Map<String, BigDecimal> refusesAfter) {
        public Service {
            renews = Set.copyOf(renews);
            refusesAfter = Map.copyOf(refusesAfter);
        }

        /** The same repair at another quote. */
        public Service at(Money other) {
            return new Service(other, renews, days, shipping, refusal, refusesOpened, refusesAfter);
        }
    }

    /**
     * A supplier's terms.
     *
     * @param shipping paid once for each order
     * @param minimumOrder what goods are charged at least
     */
    public record Supplier(Money shipping, Money minimumOrder) {}

    /** The same shop with another labour rate. */
    public Shop withLabour(Money perHour) {
        return new Shop(
                currency,
                rates,
                perHour,
                priceOfFailure,
                badPart,
                buying,
                returns,
                selling,
                condition,
                models,
                refused,
                suppliers);
    }

    /** The same shop with another price of failure. */
    public Shop withPriceOfFailure(Money price) {
        return new Shop(
                currency,
                rates,
                labourPerHour,
                price,
                badPart,
                buying,
                returns,
                selling,
                condition,
                models,
                refused,
                suppliers);
    }

    /** The same shop selling on other terms. */
    public Shop withSelling(Selling terms) {
        return new Shop(
                currency,
                rates,
                labourPerHour,
                priceOfFailure,
                badPart,
                buying,
                returns,
                terms,
                condition,
                models,
                refused,
                suppliers);
    }

    /** The same shop with another model in the place of the one of that id. */
    public Shop withModel(Model model) {
        return new Shop(
                currency,
                rates,
                labourPerHour,
                priceOfFailure,
                badPart,
                buying,
                returns,
                selling,
                condition,
                models.stream().map(m -> m.id().equals(model.id()) ? model : m).toList(),
                refused,
                suppliers);
    }

    /** What such a phone brings; empty if the shop says nothing of it. */
    public Optional<Model> model(Phone phone) {
        String label = phone.label().toLowerCase(Locale.ROOT);
        return models.stream()
                .filter(m -> m.family().equals(phone.family()))
                .filter(m ->
                        m.label().isEmpty() || label.contains(m.label().get().toLowerCase(Locale.ROOT)))
                .findFirst();
    }

    /**
     * An amount in the shop's currency, rounded to its minor unit.
     *
     * @throws MixedCurrencyException if there is no rate
     */
    public Money in(Money amount) {
        return in(amount.getCurrencyUnit(), amount.getAmount());
    }

    /** The same, for an amount finer than the minor unit. */
    public Money in(CurrencyUnit from, BigDecimal amount) {
        if (from.equals(currency)) {
            return Money.of(currency, amount, RoundingMode.HALF_EVEN);
        }
        BigDecimal rate = rates.get(from);
        if (rate == null) {
            throw new MixedCurrencyException(from, currency);
        }
        return Money.of(currency, amount.multiply(rate), RoundingMode.HALF_EVEN);
    }
}
