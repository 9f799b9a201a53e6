package hingewise.costing.csv;

import static org.assertj.core.api.Assertions.assertThat;

import hingewise.costing.Offer;
import hingewise.costing.PriceBook;
import hingewise.rulebook.RuleBook;
import hingewise.rulebook.yaml.RuleBookReader;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Set;
import org.junit.jupiter.api.Test;

class ShippedPriceBookTest {
    private final RuleBook rules = RuleBookReader.readShipped().ruleBook().orElseThrow();
    private final Reading reading = PriceBookReader.readShipped(rules);

    @Test
    void everyPartOfTheRuleBookIsOffered() {
        assertThat(reading.problems()).isEmpty();
        assertThat(book().offers())
                .extracting(Offer::part)
                .containsAll(rules.parts().keySet());
    }

    @Test
    void everySupplierIsMarkedAsInvented() {
        assertThat(book().offers())
                .allSatisfy(offer -> assertThat(offer.supplier()).startsWith("Invented "));
    }

    @Test
    void theInnerDisplayIsDearerThanWhatElseAClamshellCommonlyNeedsTogether() {
        Set<String> seldom = Set.of("inner-assembly", "inner-assembly-with-batteries", "main-board-donor");
        BigDecimal rest = rules.parts().values().stream()
                .filter(part -> part.families().contains("clamshell") && !seldom.contains(part.id()))
                .map(part -> book().cheapest(part.id()).orElseThrow().price().getAmount())
                .reduce(BigDecimal.ZERO, BigDecimal::add);
        assertThat(book().cheapest("inner-assembly").orElseThrow().price().getAmount())
                .isGreaterThan(rest);
    }

    @Test
    void noBatteryIsPulledFromAnotherPhone() {
        assertThat(book().offersFor("battery-pair"))
                .isNotEmpty()
                .extracting(Offer::grade)
                .doesNotContain("pulled");
    }

    @Test
    void everyRowIsOfAPartAndAGradeOfTheRuleBook() {
        Reading strict = PriceBookReader.read(Path.of("demo-cases/prices.csv"), rules, LocalDate.MAX);
        assertThat(strict.problems()).isEmpty();
        assertThat(strict.priceBook()).contains(book());
    }

    @Test
    void anotherRuleBookGetsThePricesOfWhatItKnows() {
        Vocabulary known = new Vocabulary(Set.of("inner-assembly", "kickstand"), Set.of("pulled"));
        assertThat(PriceBookReader.readShipped(known, "EUR")
                        .priceBook()
                        .orElseThrow()
                        .offers())
                .isNotEmpty()
                .allSatisfy(offer -> assertThat(offer.part()).isEqualTo("inner-assembly"))
                .allSatisfy(offer -> assertThat(offer.grade()).isEqualTo("pulled"));
        assertThat(PriceBookReader.readShipped(known, "USD")
                        .priceBook()
                        .orElseThrow()
                        .offers())
                .isEmpty();
    }

    private PriceBook book() {
        return reading.priceBook().orElseThrow();
    }
}
