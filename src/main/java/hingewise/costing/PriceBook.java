package hingewise.costing;

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
}
