package hingewise.offer;

import static org.assertj.core.api.Assertions.assertThat;

import hingewise.casefile.CaseFile;
import hingewise.casefile.Entry;
import hingewise.casefile.Opened;
import hingewise.casefile.Phone;
import hingewise.casefile.Report;
import hingewise.costing.PriceBook;
import hingewise.costing.RepairCosts;
import hingewise.costing.Returns;
import hingewise.costing.Shop;
import hingewise.costing.csv.PriceBookReader;
import hingewise.costing.yaml.ShopReader;
import hingewise.diagnosis.Diagnosis;
import hingewise.diagnosis.Diagnostician;
import hingewise.rulebook.EvidenceKind;
import hingewise.rulebook.RuleBook;
import hingewise.rulebook.Rules;
import hingewise.rulebook.yaml.RuleBookReader;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

/** The invented shop buying by the shipped rule book. */
class AppraiserTest {
    private static final RuleBook RULES =
            RuleBookReader.readShipped().ruleBook().orElseThrow();
    private static final PriceBook PRICES =
            PriceBookReader.readShipped(RULES).priceBook().orElseThrow();
    private static final Shop SHOP = ShopReader.readShipped(RULES).shop().orElseThrow();
    private static final Phone PHONE = new Phone("clamshell", "Kestrel Leaf 2");
    private static final Instant START = Instant.parse("2026-03-02T09:00:00Z");
    /** Dark blobs at the fold, lit beside them, nothing else wrong: the inner display is broken. */
    private static final CaseFile BROKEN_INSIDE = seen(
            "back-bulges=no",
            "was-opened=no",
            "was-dropped=no",
            "crease-blobs=yes",
            "inner-crack-visible=yes",
            "dead-cover-screen=no");

    private static final Diagnosis BROKEN = new Diagnostician(RULES).diagnose(BROKEN_INSIDE);

    @Test
    void theInnerDisplaysPriceLeadsWhereTheInnerDisplayIsBroken() {
        Worth worth = worth(PRICES, withoutService(SHOP));
        assertThat(worth.routes().get(0).route()).isEqualTo(Route.REPAIR);
        assertThat(worth.movers().get(0).number()).startsWith("price of the inner display assembly");
        assertThat(worth.movers().get(0).lower())
                .isGreaterThan(worth.movers().get(0).higher());
    }

    @Test
    void aMakersServiceQuotedBelowThePartWins() {
        Money part = PRICES.cheapest("inner-assembly").orElseThrow().price();
        Worth worth = worth(PRICES, quoted(SHOP, part.minus(30)));
        assertThat(worth.routes().get(0).route()).isEqualTo(Route.SERVICE);
    }

    @Test
    void theCeilingLiesBetweenAFixedRouteAndPerfectInformation() {
        for (String[] answers : List.of(
                new String[] {"crease-blobs=yes"},
                new String[] {"dead-cover-screen=yes", "was-opened=yes"},
                new String[] {"back-bulges=no"})) {
            CaseFile file = seen(answers);
            Bracket bracket = new Appraiser(RULES, PRICES, SHOP)
                    .appraise(file, new Diagnostician(RULES).diagnose(file), Optional.empty(), false)
                    .worth()
                    .orElseThrow()
                    .bracket();
            assertThat(amount(bracket.ceiling()))
                    .as("%s", String.join(" ", answers))
                    .isBetween(amount(bracket.fixed()), amount(bracket.perfect()));
        }
    }

    /** With sale values held fixed. */
    @Test
    void aDearerPartNeverRaisesTheCeiling() {
        BigDecimal before = amount(Optional.of(Money.parse("EUR 1000000")));
        for (String factor : List.of("0.5", "0.8", "1", "1.2", "1.5", "3")) {
            PriceBook dearer = PRICES.scaled("inner-assembly", new BigDecimal(factor))
                    .scaled("inner-assembly-with-batteries", new BigDecimal(factor));
            BigDecimal ceiling = amount(worth(dearer, SHOP).bracket().fixed());
            assertThat(ceiling).as("times %s", factor).isLessThanOrEqualTo(before);
            before = ceiling;
        }
    }

    @Test
    void theChanceOfLossAtTheCeilingMeetsTheLimit() {
        Worth worth = worth(PRICES, SHOP);
        assertThat(worth.offerCeiling()).isPresent();
        assertThat(amount(worth.offerCeiling())).isLessThanOrEqualTo(amount(worth.lossCeiling()));
        assertThat(amount(worth.offerCeiling()))
                .isLessThanOrEqualTo(amount(worth.bracket().ceiling()));
    }

    /** Not the bracket: where the chance of loss holds the offer down, that is what the numbers move. */
    @Test
    void whatMovesItMovesTheMostToPayItself() {
        Worth worth = worth(PRICES, SHOP);
        String most = worth.offerCeiling().orElseThrow().getAmount().toPlainString();
        assertThat(worth.movers())
                .isNotEmpty()
                .allSatisfy(m ->
                        assertThat(m.sentence()).contains("the most to pay would be ", " instead of " + most + " EUR"));
    }

    @Test
    void theVerdictNamesWhatTheCeilingCountsOn() {
        Worth worth = worth(PRICES, SHOP);
        String verdict = new Appraiser(RULES, PRICES, SHOP)
                .appraise(BROKEN_INSIDE, BROKEN, Optional.empty(), false)
                .verdict();
        assertThat(worth.countsOn()).isPresent();
        assertThat(verdict)
                .contains("That counts on this before the route is chosen: "
                        + worth.countsOn().orElse(""));
    }

    @Test
    void aHigherAskingPriceThanTheCeilingIsRefused() {
        Money most = worth(PRICES, SHOP).offerCeiling().orElseThrow();
        assertThat(verdict(most)).startsWith("Worth buying at ");
        assertThat(verdict(most.plus(30))).startsWith("Do not buy at ");
    }

    @Test
    void aReturnIsOpenUntilThePhoneIsOpenedOrTheDaysAreOver() {
        assertThat(Returns.of(BROKEN_INSIDE, SHOP).closed()).isEmpty();
        List<Entry> late = new ArrayList<>(BROKEN_INSIDE.entries());
        late.add(report("late", START.plus(Duration.ofDays(15)), "crease-blobs", "yes"));
        assertThat(Returns.of(new CaseFile("late", true, PHONE, late), SHOP).closed())
                .hasValueSatisfying(why -> assertThat(why).contains("14 days"));
        List<Entry> opened = new ArrayList<>(BROKEN_INSIDE.entries());
        opened.add(new Opened("o", START, "bench", "board-back-off", ""));
        assertThat(Returns.of(new CaseFile("opened", true, PHONE, opened), SHOP).closed())
                .isPresent();
    }

    @Test
    void whatIsOpenedOnTheBenchIsNotGivenBackAndSellsForLess() {
        Ways ways = new Ways(BROKEN, 1);
        Shop.Model model = SHOP.model(PHONE).orElseThrow();
        RepairCosts costs = new RepairCosts(RULES, PRICES, SHOP, PHONE);
        Routes closed = new Routes(RULES, costs, model, BROKEN, Bench.of(BROKEN, ways));
        Routes opened =
                new Routes(RULES, costs, model, BROKEN, new Bench(ways, Set.of("board-back-off"), true, Set.of()));
        assertThat(closed.others(true)).extracting(Choice::route).contains(Route.RETURN.id());
        assertThat(opened.others(true)).extracting(Choice::route).doesNotContain(Route.RETURN.id());
        long[] before = closed.repair(List.of()).choice().proceeds();
        long[] after = opened.repair(List.of()).choice().proceeds();
        assertThat(Arrays.stream(after).sum()).isLessThan(Arrays.stream(before).sum());
    }

    @Test
    void nothingIsReckonedWhileWorkStopsOrForAPhoneTheShopDoesNotKnow() {
        Appraiser appraiser = new Appraiser(RULES, PRICES, SHOP);
        assertThat(appraiser
                        .appraise(BROKEN_INSIDE, BROKEN, Optional.empty(), true)
                        .worth())
                .isEmpty();
        Shop without =
                ShopReader.readShipped(new Rules().cause("a", .1).book()).shop().orElseThrow();
        assertThat(new Appraiser(RULES, PRICES, without)
                        .appraise(BROKEN_INSIDE, BROKEN, Optional.empty(), false)
                        .verdict())
                .contains("add a model of the family clamshell");
    }

    @Test
    void theSameCaseHasTheSameFigures() {
        assertThat(worth(PRICES, SHOP)).isEqualTo(worth(PRICES, SHOP));
    }

    private static String verdict(Money asked) {
        return new Appraiser(RULES, PRICES, SHOP)
                .appraise(BROKEN_INSIDE, BROKEN, Optional.of(asked), false)
                .verdict();
    }

    private static Worth worth(PriceBook prices, Shop shop) {
        return new Appraiser(RULES, prices, shop)
                .appraise(BROKEN_INSIDE, BROKEN, Optional.empty(), false)
                .worth()
                .orElseThrow();
    }

    private static Shop withoutService(Shop shop) {
        Shop.Model model = shop.model(PHONE).orElseThrow();
        return shop.withModel(model.at(model.resale(), model.asIs(), model.salvage(), Optional.empty()));
    }

    private static Shop quoted(Shop shop, Money quote) {
        Shop.Model model = shop.model(PHONE).orElseThrow();
        return shop.withModel(model.at(
                model.resale(), model.asIs(), model.salvage(), model.service().map(s -> s.at(quote))));
    }

    private static BigDecimal amount(Optional<Money> money) {
        return money.orElse(Money.zero(CurrencyUnit.EUR)).getAmount();
    }

    private static CaseFile seen(String... answers) {
        List<Entry> entries = new ArrayList<>();
        for (String answer : answers) {
            String[] parts = answer.split("=");
            entries.add(report("e" + entries.size(), START, parts[0], parts[1]));
        }
        return new CaseFile("invented", true, PHONE, entries);
    }

    private static Report report(String id, Instant at, String about, String answer) {
        return new Report(id, at, "bench", EvidenceKind.LOOK, about, answer, Optional.empty(), "");
    }
}
