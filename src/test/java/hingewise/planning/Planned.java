package hingewise.planning;

import hingewise.casefile.Story;
import hingewise.costing.Offer;
import hingewise.costing.PriceBook;
import hingewise.costing.RepairCosts;
import hingewise.costing.Shop;
import hingewise.costing.Shops;
import hingewise.diagnosis.Diagnostician;
import hingewise.rulebook.RuleBook;
import hingewise.rulebook.Rules;
import java.util.List;
import org.joda.money.Money;

/** Small cases and the price books they are planned with. */
final class Planned {
    static final PriceBook DISPLAY_FOR_40 =
            new PriceBook(List.of(new Offer("display", "Invented", Money.parse("EUR 40.00"), "service", 2, .05)));
    static final PriceBook NO_OFFERS = new PriceBook(List.of());

    private Planned() {}

    static Planning of(Rules rules, Story story, PriceBook prices) {
        return of(rules, story, prices, Shops.plain());
    }

    static Planning of(Rules rules, Story story, PriceBook prices, Shop shop) {
        RuleBook book = rules.book();
        return new Planning(
                book,
                new RepairCosts(book, prices, shop, Rules.FAMILY),
                new Diagnostician(book).diagnose(story.told()));
    }
}
