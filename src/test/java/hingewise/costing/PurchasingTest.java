package hingewise.costing;

import static hingewise.costing.Shops.eur;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hingewise.casefile.Phone;
import hingewise.rulebook.RuleBook;
import hingewise.rulebook.Rules;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sums worked by hand. */
class PurchasingTest {
    private static final Rules TWO = new Rules()
            .cause("a", .1)
            .cause("b", .1)
            .assembly("both", Set.of("a", "b"), Set.of())
            .assembly("one", Set.of("a"), Set.of("glue"))
            .assembly("other", Set.of("b"), Set.of("glue"))
            .assembly("glue", Set.of(), Set.of());
    private static final Shop FREE = new Shops().labour("0").shop();
    private static final List<String> BROKEN = List.of("part of a", "part of b");

    @Test
    void whatTwoPartsNeedIsPaidOnce() {
        Purchase purchase = cheapest(FREE, offer("one", 10), offer("other", 10), offer("glue", 8), offer("both", 30));
        assertThat(purchase.lines()).extracting(l -> l.part().id()).containsExactly("one", "glue", "other");
        assertThat(purchase.paid()).isEqualTo(eur("28"));
    }

    @Test
    void anAssemblyIsTakenWhereItIsCheaperThanItsSingles() {
        Purchase purchase = cheapest(FREE, offer("one", 10), offer("other", 10), offer("glue", 8), offer("both", 27));
        assertThat(purchase.lines()).extracting(l -> l.part().id()).containsExactly("both");
    }

    @Test
    void manyComponentsAtOnceAreNoTrouble() {
        Rules rules = new Rules();
        List<Offer> offers = new ArrayList<>(List.of(offer("glue", 1)));
        List<String> needed = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
            rules.cause("c" + i, .1)
                    .assembly("dear" + i, Set.of("c" + i), Set.of())
                    .assembly("cheap" + i, Set.of("c" + i), Set.of("glue"));
            offers.add(offer("dear" + i, 20 + i));
            offers.add(offer("cheap" + i, 10 + i));
            needed.add("part of c" + i);
        }
        rules.assembly("glue", Set.of(), Set.of());
        assertThat(purchasing(rules.book(), FREE, offers).cheapest(needed).lines())
                .extracting(l -> l.part().id())
                .hasSize(41)
                .noneMatch(id -> id.startsWith("dear"));
    }

    @Test
    void whatNobodySellsIsListedAndNotDropped() {
        RuleBook singles = new Rules()
                .cause("a", .1)
                .cause("b", .1)
                .assembly("one", Set.of("a"), Set.of("glue"))
                .assembly("other", Set.of("b"), Set.of("glue"))
                .assembly("glue", Set.of(), Set.of())
                .book();
        Purchase purchase = purchasing(singles, FREE, List.of(offer("one", 10), offer("glue", 8)))
                .cheapest(BROKEN);
        assertThat(purchase.lines())
                .filteredOn(l -> l.offer().isEmpty())
                .extracting(l -> l.part().id())
                .containsExactly("other");
        assertThat(purchase.missing()).isEqualTo(1);
        assertThat(purchase.paid()).isEqualTo(eur("18"));
    }

    @Test
    void shippingIsPaidOnceASupplierAndAnOrderBelowTheMinimumIsChargedAsTheMinimum() {
        Shop shop = shop(Map.of("Nord", new Shop.Supplier(eur("5"), eur("30"))), Map.of(), Map.of());
        Purchase purchase = cheapest(shop, from("Nord", "one", 10), from("Nord", "other", 10), offer("glue", 8));
        assertThat(purchase.goods()).isEqualTo(eur("28"));
        assertThat(purchase.sending()).isEqualTo(eur("15"));
    }

    @Test
    void aGradeTheShopRefusesIsNotBought() {
        Offer pulled = new Offer("both", "S", eur("5"), "pulled", 3, 0);
        Offer service = new Offer("both", "S", eur("50"), "service", 3, 0);
        assertThat(cheapest(FREE, pulled, service).paid()).isEqualTo(eur("5"));
        Shop refusing = shop(Map.of(), Map.of("both", Set.of("pulled")), Map.of());
        assertThat(cheapest(refusing, pulled, service).paid()).isEqualTo(eur("50"));
        assertThat(cheapest(refusing, pulled).missing()).isEqualTo(1);
    }

    /** Ten per cent of 200.00 is more than the 15.00 that the pulled part is cheaper. */
    @Test
    void aCheaperPartThatBuyersPayLessForIsDearer() {
        Shop shop = shop(Map.of(), Map.of(), Map.of("both", Map.of("pulled", new BigDecimal(".1"))));
        Offer pulled = new Offer("both", "S", eur("35"), "pulled", 3, 0);
        Offer service = new Offer("both", "S", eur("50"), "service", 3, 0);
        assertThat(cheapest(shop, pulled, service).lines().get(0).offer()).contains(service);
    }

    @ParameterizedTest
    @CsvSource({
        "'',            '',    true",
        "sand,          '',    true",
        "SAND,          '',    true",
        "blue,          '',    false",
        "'',            '512', true",
        "sand,          '256', false",
    })
    void colourAndVariantMustBeThoseOfThePhone(String colour, String variant, boolean fits) {
        Offer offer = new Offer(
                "both", "S", eur("9"), "pulled", 3, 0, new Offer.Limits(1, OptionalInt.empty(), variant, colour));
        assertThat(cheapest(FREE, offer).missing()).isEqualTo(fits ? 0 : 1);
    }

    @Test
    void aQuantityBreakIsTakenWhereAllOfItCostLessThanOne() {
        Offer three =
                new Offer("both", "S", eur("3"), "pulled", 3, 0, new Offer.Limits(3, OptionalInt.empty(), "", ""));
        assertThat(cheapest(FREE, offer("both", 10), three).paid()).isEqualTo(eur("9"));
        assertThat(cheapest(FREE, offer("both", 8), three).paid()).isEqualTo(eur("8"));
        Offer twoLeft =
                new Offer("both", "S", eur("3"), "pulled", 3, 0, new Offer.Limits(3, OptionalInt.of(2), "", ""));
        assertThat(cheapest(FREE, offer("both", 10), twoLeft).paid()).isEqualTo(eur("10"));
    }

    @Test
    void theOwnShelfGoesFirstAsLongAsItLasts() {
        Offer shelf = new Offer(
                "both", "own stock", eur("4"), "pulled", 0, 0, new Offer.Limits(1, OptionalInt.of(1), "", ""));
        Offer empty = new Offer(
                "both", "own stock", eur("4"), "pulled", 0, 0, new Offer.Limits(1, OptionalInt.of(0), "", ""));
        assertThat(cheapest(FREE, offer("both", 10), shelf).lines().get(0).offer())
                .contains(shelf);
        assertThat(cheapest(FREE, offer("both", 10), empty).paid()).isEqualTo(eur("10"));
    }

    @Test
    void theRunnerUpIsSoonerOrPaidLess() {
        Shop shop = shop(Map.of(), Map.of(), Map.of());
        Offer slow = new Offer("both", "S", eur("10"), "pulled", 9, 0);
        Offer fast = new Offer("both", "T", eur("40"), "pulled", 2, 0);
        Purchasing purchasing = purchasing(TWO.book(), shop, List.of(slow, fast));
        Purchase chosen = purchasing.cheapest(BROKEN);
        assertThat(chosen.days()).isEqualTo(9);
        assertThat(purchasing.runnerUp(BROKEN, chosen)).hasValueSatisfying(r -> {
            assertThat(r.days()).isEqualTo(2);
            assertThat(r.paid().minus(chosen.paid())).isEqualTo(eur("30"));
        });
        Offer risky = new Offer("both", "U", eur("9"), "pulled", 9, .9);
        Shop testing = new Shops().labour("0").badPart("20").shop();
        Purchasing other = purchasing(TWO.book(), testing, List.of(slow, risky));
        assertThat(other.cheapest(BROKEN).lines().get(0).offer()).contains(slow);
        assertThat(other.runnerUp(BROKEN, other.cheapest(BROKEN)))
                .hasValueSatisfying(r -> assertThat(r.lines().get(0).offer()).contains(risky));
        assertThat(purchasing(TWO.book(), shop, List.of(slow)).runnerUp(BROKEN, chosen))
                .isEmpty();
    }

    @Test
    void openedStatesAreNotPaidAgain() {
        RuleBook rules = new Rules()
                .cause("a", .1)
                .access("back", Map.of())
                .partFor("one", "a", Optional.of("back"))
                .book();
        RepairCosts costs =
                new RepairCosts(rules, new PriceBook(List.of(offer("one", 10))), Shops.plain(), Rules.FAMILY);
        Money closed =
                new Purchasing(costs, Set.of()).cheapest(List.of("part of a")).work();
        Money opened = new Purchasing(costs, Set.of("back"))
                .cheapest(List.of("part of a"))
                .work();
        // Twenty minutes of opening at 30.00 an hour.
        assertThat(closed.minus(opened)).isEqualTo(eur("10"));
    }

    @Test
    void pricesInTwoCurrenciesAreRefusedUnlessThereIsARate() {
        Offer dollars = new Offer("both", "S", Money.parse("USD 10"), "pulled", 3, 0);
        assertThatThrownBy(() -> cheapest(FREE, offer("one", 3), dollars))
                .isInstanceOf(MixedCurrencyException.class)
                .hasMessageContaining("USD")
                .hasMessageContaining("EUR");
        Shop rated = new Shops()
                .labour("0")
                .rates(Map.of(CurrencyUnit.USD, new BigDecimal(".925")))
                .shop();
        assertThat(cheapest(rated, dollars).paid()).isEqualTo(eur("9.25"));
    }

    /** Ten cents ten thousand times is a thousand, to the cent; as binary fractions it is not. */
    @Test
    void tenThousandSumsDoNotDrift() {
        Money sum = Money.zero(CurrencyUnit.EUR);
        for (int i = 0; i < 10_000; i++) {
            sum = sum.plus(cheapest10().paid());
        }
        assertThat(sum).isEqualTo(eur("1000"));
    }

    private static Purchase cheapest10() {
        Money ten = eur("0.10");
        Money none = eur("0");
        return new Purchase(List.of(), ten, none, none, none, none, none, 0);
    }

    private static Purchase cheapest(Shop shop, Offer... offers) {
        return purchasing(TWO.book(), shop, List.of(offers)).cheapest(BROKEN);
    }

    private static Purchasing purchasing(RuleBook rules, Shop shop, List<Offer> offers) {
        return new Purchasing(
                new RepairCosts(rules, new PriceBook(offers), shop, new Phone(Rules.FAMILY, "Kestrel 512 GB, sand")),
                Set.of());
    }

    private static Shop shop(
            Map<String, Shop.Supplier> suppliers,
            Map<String, Set<String>> refused,
            Map<String, Map<String, BigDecimal>> origin) {
        return new Shops()
                .labour("0")
                .models(Shops.model(Rules.FAMILY, "200"))
                .suppliers(suppliers)
                .refused(refused)
                .origin(origin)
                .shop();
    }

    private static Offer offer(String part, int price) {
        return from("S", part, price);
    }

    private static Offer from(String supplier, String part, int price) {
        return new Offer(part, supplier, Money.of(CurrencyUnit.EUR, price), "pulled", 3, 0);
    }
}
