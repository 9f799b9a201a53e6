package hingewise.intake.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import hingewise.assessment.Assessment;
import hingewise.assessment.Assessor;
import hingewise.casefile.CaseFile;
import hingewise.casefile.Phone;
import hingewise.casefile.Report;
import hingewise.costing.PriceBook;
import hingewise.costing.Shop;
import hingewise.costing.csv.PriceBookReader;
import hingewise.costing.yaml.ShopReader;
import hingewise.offer.Worth;
import hingewise.rulebook.EvidenceKind;
import hingewise.rulebook.RuleBook;
import hingewise.rulebook.yaml.RuleBookReader;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

class AssessedAppraiserTest {
    private static final RuleBook RULES =
            RuleBookReader.readShipped().ruleBook().orElseThrow();
    private static final PriceBook PRICES =
            PriceBookReader.readShipped(RULES).priceBook().orElseThrow();
    private static final Shop SHOP = ShopReader.readShipped(RULES).shop().orElseThrow();
    private static final Phone PHONE = new Phone("clamshell", "");

    /** Its hours at the bench are so dear that a bench sheet seldom pays. */
    private static final Shop DEAR = new Shop(
            SHOP.currency(),
            SHOP.rates(),
            FakeShop.eur("200"),
            SHOP.priceOfFailure(),
            SHOP.badPart(),
            SHOP.buying(),
            SHOP.returns(),
            SHOP.selling(),
            SHOP.condition(),
            SHOP.models(),
            SHOP.refused(),
            SHOP.suppliers());

    private static Appraisal at(Money price, Money shipping, Claim... claims) {
        return at(SHOP, price, shipping, claims);
    }

    private static Appraisal at(Shop shop, Money price, Money shipping, Claim... claims) {
        return new AssessedAppraiser(RULES, PRICES, shop)
                .prospect(new Claims(PHONE, List.of(claims), Optional.empty()))
                .at(price, shipping);
    }

    /** One program must not name two ceilings for one phone, unless the bench sheet, which a listing gets none of, counts. */
    @Test
    void theCeilingIsTheOneThatTheOfferNamesWhereNoBenchSheetCounts() {
        int same = 0;
        for (String claim : List.of("vibrates-no-image", "no-sign-of-life", "crease-blobs", "dead-cover-screen")) {
            Worth worth = worth(claim);
            Money ceiling = worth.offerCeiling().orElseThrow();
            Appraisal appraisal = at(DEAR, ceiling, SHOP.buying().shippingIn(), new Claim(claim, true));
            if (worth.sheet().isEmpty()) {
                same++;
                assertThat(appraisal.ceiling()).as(claim).isEqualTo(ceiling);
                assertThat(appraisal.profit())
                        .as(claim)
                        .isGreaterThanOrEqualTo(SHOP.buying().margin());
                assertThat(appraisal.chanceOfLoss())
                        .as(claim)
                        .isLessThanOrEqualTo(SHOP.buying().lossLimit().doubleValue() + 1e-6);
            }
        }
        assertThat(same).isPositive();
    }

    private static Worth worth(String claim) {
        Assessor assessor = new Assessor(RULES, PRICES, DEAR);
        Assessment assessment = assessor.assess(new CaseFile(
                "",
                false,
                PHONE,
                List.of(new Report(
                        "e1", Instant.EPOCH, "seller", EvidenceKind.CLAIM, claim, "yes", Optional.empty(), ""))));
        return assessor.appraise(assessment, Optional.empty()).worth().orElseThrow();
    }

    @Test
    void whatIsDearerToGetPromisesLess() {
        Claim dead = new Claim("no-sign-of-life", true);
        Appraisal cheap = at(FakeShop.eur("60"), FakeShop.eur("5"), dead);
        Appraisal shipped = at(FakeShop.eur("60"), FakeShop.eur("15"), dead);
        Appraisal dear = at(FakeShop.eur("120"), FakeShop.eur("5"), dead);
        assertThat(shipped.profit()).isEqualTo(cheap.profit().minus(FakeShop.eur("10")));
        assertThat(shipped.ceiling()).isLessThan(cheap.ceiling());
        assertThat(dear.profit()).isLessThan(cheap.profit());
        assertThat(dear.chanceOfLoss()).isGreaterThanOrEqualTo(cheap.chanceOfLoss());
        assertThat(dear.ceiling()).isEqualTo(cheap.ceiling());
    }

    @Test
    void aPhoneThatMayBurnIsNotBoughtAtAnyPrice() {
        Appraisal appraisal = at(FakeShop.eur("1"), FakeShop.eur("5"), new Claim("back-bulges", true));
        assertThat(appraisal.stops()).isNotEmpty();
        assertThat(appraisal.ceiling()).isEqualTo(FakeShop.eur("0"));
    }
}
