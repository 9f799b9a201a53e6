package hingewise.costing;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** Shops with round figures, for tests. */
public final class Shops {
    private Shops() {}

    /** Labour 30.00 an hour, a failure 50.00, everything else nothing. */
    public static Shop plain() {
        return selling(List.of());
    }

    /** The same shop, knowing what some phones bring. */
    public static Shop selling(List<Shop.Model> models) {
        Money nothing = Money.zero(CurrencyUnit.EUR);
        BigDecimal none = BigDecimal.ZERO;
        return new Shop(
                CurrencyUnit.EUR,
                Map.of(),
                Money.parse("EUR 30.00"),
                Money.parse("EUR 50.00"),
                nothing,
                new Shop.Buying(nothing, none, nothing, new BigDecimal(".999")),
                Optional.empty(),
                new Shop.Selling(none, nothing, 0, none, none, nothing, nothing),
                new Shop.Condition(none, Map.of(), Map.of(), Map.of(), none),
                models,
                Map.of(),
                Map.of());
    }
}
