package hingewise.costing;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** Shops with round figures, for tests: labour 30.00 an hour, a failure 50.00, and nothing else costs anything. */
public final class Shops {
    private static final BigDecimal NONE = BigDecimal.ZERO;
    private static final Money FREE = Money.zero(CurrencyUnit.EUR);

    private Map<CurrencyUnit, BigDecimal> rates = Map.of();
    private Money labour = eur("30");
    private Money badPart = FREE;
    private Shop.Buying buying = new Shop.Buying(FREE, NONE, FREE, new BigDecimal(".999"));
    private Optional<Shop.Returning> returning = Optional.empty();
    private Shop.Selling selling = new Shop.Selling(NONE, FREE, 0, NONE, NONE, FREE, FREE);
    private Shop.Condition condition = new Shop.Condition(NONE, Map.of(), Map.of(), Map.of(), NONE);
    private List<Shop.Model> models = List.of();
    private Map<String, Set<String>> refused = Map.of();
    private Map<String, Shop.Supplier> suppliers = Map.of();

    public static Shop plain() {
        return new Shops().shop();
    }

    public static Money eur(String amount) {
        return Money.of(CurrencyUnit.EUR, new BigDecimal(amount));
    }

    public Shops rates(Map<CurrencyUnit, BigDecimal> to) {
        rates = to;
        return this;
    }

    public Shops labour(String to) {
        labour = eur(to);
        return this;
    }

    public Shops badPart(String to) {
        badPart = eur(to);
        return this;
    }

    public Shops buying(Shop.Buying to) {
        buying = to;
        return this;
    }

    public Shops returning(Shop.Returning to) {
        returning = Optional.of(to);
        return this;
    }

    public Shops selling(Shop.Selling to) {
        selling = to;
        return this;
    }

    public Shops condition(Shop.Condition to) {
        condition = to;
        return this;
    }

    public Shops origin(Map<String, Map<String, BigDecimal>> to) {
        return condition(new Shop.Condition(NONE, Map.of(), to, Map.of(), NONE));
    }

    public Shops models(Shop.Model... to) {
        models = List.of(to);
        return this;
    }

    public Shops refused(Map<String, Set<String>> to) {
        refused = to;
        return this;
    }

    public Shops suppliers(Map<String, Shop.Supplier> to) {
        suppliers = to;
        return this;
    }

    /** A model of a family that brings this much, and nothing in any other state. */
    public static Shop.Model model(String family, String resale) {
        return new Shop.Model(
                "model", family, Optional.empty(), eur(resale), NONE, FREE, Map.of(), Map.of(), 0, Optional.empty());
    }

    public Shop shop() {
        return new Shop(
                CurrencyUnit.EUR,
                rates,
                labour,
                eur("50"),
                badPart,
                buying,
                returning,
                selling,
                condition,
                models,
                refused,
                suppliers);
    }
}
