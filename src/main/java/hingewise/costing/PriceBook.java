package hingewise.costing;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** The shop's own list of offers. */
public record PriceBook(List<Offer> offers) {
    public PriceBook {
        offers = List.copyOf(offers);
    }

    /** Every offer of a part, in the order listed. */
    public List<Offer> offersFor(String part) {
        return offers.stream().filter(o -> o.part().equals(part)).toList();
    }

    /** The offer with the lowest price; the first listed of equals. */
    public Optional<Offer> cheapest(String part) {
        return offersFor(part).stream().min(Comparator.comparing(Offer::price));
    }

    /** The same list with every price of a part multiplied. */
    public PriceBook scaled(String part, BigDecimal factor) {
        return new PriceBook(offers.stream()
                .map(o -> o.part().equals(part) ? o.at(o.price().multipliedBy(factor, RoundingMode.HALF_EVEN)) : o)
                .toList());
    }
}
