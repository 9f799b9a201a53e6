package hingewise.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hingewise.casefile.Price;
import hingewise.casefile.Story;
import hingewise.costing.MixedCurrencyException;
import hingewise.costing.PriceBook;
import hingewise.costing.RepairCosts;
import hingewise.costing.Shop;
import hingewise.costing.Shops;
import hingewise.costing.Terms;
import hingewise.decision.Planner;
import hingewise.diagnosis.Diagnostician;
import hingewise.rulebook.RuleBook;
import hingewise.rulebook.Rules;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.Test;

/**
 * What the phone itself costs, weighed with what can be done about it. Worked by hand: a working phone brings 100.00, a
 * fault costs 50.00, labour 30.00 an hour; sent back for 5.00, nine of ten sellers take it.
 */
class PricesTest {
    private static final Shop SHOP = new Shops()
            .models(Shops.model(Rules.FAMILY, "100"))
            .buying(new Shop.Buying(Shops.eur("0"), BigDecimal.ZERO, Shops.eur("20"), new BigDecimal(".999")))
            .returning(new Shop.Returning(14, Shops.eur("5"), new BigDecimal(".9")))
            .shop();

    private static final Rules FAULTY =
            new Rules().cause("x", .9).observation("s", .1).access("back-off", Map.of());

    private static Plan plan(Rules rules, Story story) {
        RuleBook book = rules.book();
        return new Planning(
                        book,
                        new RepairCosts(book, new PriceBook(List.of()), SHOP, Rules.FAMILY),
                        new Diagnostician(book).diagnose(story.told()),
                        Terms.of(story.told(), SHOP))
                .plan();
    }

    private static Decision.Kind decided(Story story) {
        return plan(FAULTY, story).decision().kind();
    }

    private static Story story() {
        return new Story(Rules.FAMILY);
    }

    private static Story here() {
        return story().look("s", "no");
    }

    /** Left it costs .9 × 50; given back .9 × (100 − 80 + 5), and where it is refused, one of ten times, all of 100. */
    @Test
    void aFaultyPhoneIsGivenBackAsLongAsItIsUnopened() {
        Plan plan = plan(FAULTY, here().price(Price.What.PAID, "80"));
        assertThat(plan.decision().kind()).isEqualTo(Decision.Kind.RETURN);
        assertThat(plan.now()).isEqualTo(Shops.eur("32.50"));
        assertThat(decided(here())).isEqualTo(Decision.Kind.LEAVE);
        assertThat(decided(here().price(Price.What.PAID, "80").opened("back-off")))
                .isEqualTo(Decision.Kind.LEAVE);
    }

    /** Left it costs .5 × 50; the try leaves nothing of that for 12.50; given back it costs 19.00. */
    @Test
    void openingCostsTheRightToReturn() {
        Rules rules = new Rules()
                .cause("x", .5)
                .observation("s", .1)
                .access("back-off", Map.of())
                .tryOut("reseat", Optional.of("back-off"), Map.of("x", .999), Map.of());
        assertThat(plan(rules, here()).goesOn()).isTrue();
        Plan returnable = plan(rules, here().price(Price.What.PAID, "98"));
        assertThat(returnable.decision().kind()).isEqualTo(Decision.Kind.RETURN);
        assertThat(returnable.now().getAmount().doubleValue()).isCloseTo(16.3, within(1e-9));
        Step reseat = plan(rules, here()).steps().get(0);
        assertThat(returnable.expected().getAmount().doubleValue())
                .as("12.50 for the try and little else, against 16.30 to give it back")
                .isLessThan(16.3);
        assertThat(returnable.now().minus(returnable.expected())).isLessThan(reseat.net());
    }

    /** Bought at 60 it brings 100 − 45 − 60, which is less than the margin of 20; at 30 it brings 25. */
    @Test
    void atThePriceAskedAListingIsOfferedForOrPassed() {
        assertThat(decided(story())).isEqualTo(Decision.Kind.OFFER);
        assertThat(decided(story().price(Price.What.ASKED, "60"))).isEqualTo(Decision.Kind.PASS);
        assertThat(decided(story().price(Price.What.ASKED, "30"))).isEqualTo(Decision.Kind.OFFER);
        assertThat(plan(FAULTY, story().price(Price.What.ASKED, "30"))
                        .now()
                        .getAmount()
                        .doubleValue())
                .isCloseTo(45, within(5 * 15 / Math.sqrt(Planner.WORLDS)));
    }

    @Test
    void onceItIsPaidForNothingIsPassedAndItCanBeGivenBack() {
        Story paid = story().price(Price.What.ASKED, "60").price(Price.What.PAID, "60");
        assertThat(decided(paid)).isEqualTo(Decision.Kind.LEAVE);
        assertThat(decided(story().price(Price.What.ASKED, "60").price(Price.What.PAID, "90")))
                .isEqualTo(Decision.Kind.RETURN);
    }

    @Test
    void theLastPriceThatStandsCountsInTheShopsCurrency() {
        Story twice = story().price(Price.What.ASKED, "60").price(Price.What.ASKED, "50");
        assertThat(Terms.of(twice.told(), SHOP).asked()).contains(Shops.eur("50"));
        assertThat(Terms.of(twice.withdrawn("e2").told(), SHOP).asked()).contains(Shops.eur("60"));
        Story foreign = story().price(Price.What.PAID, "60", "JPY");
        Assertions.assertThatThrownBy(() -> Terms.of(foreign.told(), SHOP)).isInstanceOf(MixedCurrencyException.class);
    }
}
