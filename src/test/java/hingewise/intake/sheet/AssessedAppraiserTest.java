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

    private static Appraisal at(Money price, Money shipping, Claim... claims) {
        return new AssessedAppraiser(RULES, PRICES, SHOP)
                .prospect(new Claims(PHONE, List.of(claims), Optional.empty()))
                .at(price, shipping);
    }

    /** One program must not name two ceilings for one phone. */
    @Test
    void theCeilingIsTheOneThatTheOfferNames() {
        Assessor assessor = new Assessor(RULES, PRICES, SHOP);
        Assessment assessment = assessor.assess(new CaseFile(
                "",
                false,
                PHONE,
                List.of(new Report(
                        "e1",
                        Instant.EPOCH,
                        "seller",
                        EvidenceKind.CLAIM,
                        "vibrates-no-image",
                        "yes",
                        Optional.empty(),
                        ""))));
        Worth worth = assessor.appraise(assessment, Optional.empty()).worth().orElseThrow();
        Money shipping = SHOP.buying().shippingIn();
        Money ceiling = worth.offerCeiling().orElseThrow();
        Appraisal appraisal = at(ceiling, shipping, new Claim("vibrates-no-image", true));
        assertThat(appraisal.ceiling()).isEqualTo(ceiling);
        assertThat(appraisal.profit()).isGreaterThanOrEqualTo(SHOP.buying().margin());
        assertThat(appraisal.chanceOfLoss())
                .isLessThanOrEqualTo(SHOP.buying().lossLimit().doubleValue() + 1e-6);
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
