package hingewise.costing.yaml;

import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.joda.money.IllegalCurrencyException;

/** Currencies by their codes; those of ISO 4217 that one pays with. */
final class Currencies {
    private Currencies() {}

    static Optional<CurrencyUnit> of(String code) {
        try {
            return Optional.of(CurrencyUnit.of(code)).filter(c -> !c.isPseudoCurrency());
        } catch (IllegalCurrencyException e) {
            return Optional.empty();
        }
    }
}
