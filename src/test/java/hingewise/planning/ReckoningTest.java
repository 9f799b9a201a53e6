package hingewise.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hingewise.casefile.Story;
import hingewise.costing.PriceBook;
import hingewise.costing.RepairCosts;
import hingewise.costing.Shop;
import hingewise.costing.csv.PriceBookReader;
import hingewise.costing.yaml.ShopReader;
import hingewise.diagnosis.Diagnostician;
import hingewise.rulebook.Access;
import hingewise.rulebook.Cause;
import hingewise.rulebook.Part;
import hingewise.rulebook.RuleBook;
import hingewise.rulebook.yaml.RuleBookReader;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ReckoningTest {
    private final RuleBook rules = RuleBookReader.readShipped().ruleBook().orElseThrow();
    private final PriceBook prices =
            PriceBookReader.readShipped(rules).priceBook().orElseThrow();
    private final Shop shop = ShopReader.readShipped(rules).shop().orElseThrow();

    private Reckoning reckoning(String family) {
        return new Reckoning(
                rules,
                new RepairCosts(rules, prices, shop, family),
                new Diagnostician(rules).diagnose(new Story(family).told()),
                new Concern(Set.of()));
    }

    /** What is left is found later and mended then, and that the phone came back costs besides. */
    @ParameterizedTest
    @ValueSource(strings = {"book", "clamshell"})
    void leavingWhatIsSurelyBrokenNeverCostsLessThanMendingIt(String family) {
        Reckoning reckoning = reckoning(family);
        int mended = 0;
        for (Cause cause : reckoning.counted()) {
            Set<Part> parts = reckoning.parts(cause.component());
            if (!parts.isEmpty()) {
                mended++;
                Set<Access> steps = new LinkedHashSet<>();
                parts.forEach(p -> steps.addAll(rules.pathTo(p.access())));
                double mending = reckoning.fitting(parts)
                        + steps.stream().mapToDouble(reckoning::opening).sum()
                        + reckoning.ending(Decision.Kind.LEAVE, !steps.isEmpty(), Set.of());
                assertThat(reckoning.ending(Decision.Kind.LEAVE, false, Set.of(cause.id())))
                        .as(cause.id())
                        .isGreaterThan(mending);
            }
        }
        assertThat(mended).isGreaterThan(20);
    }

    /** What no part puts right takes off the worth what the shop says, once, whatever else its failing costs. */
    @ParameterizedTest
    @ValueSource(strings = {"account-locked", "organisation-managed"})
    void leavingALockCostsWhatItTakesOffTheWorth(String lock) {
        RepairCosts costs = new RepairCosts(rules, prices, shop, "book");
        Reckoning reckoning = reckoning("book");
        double sound = reckoning.ending(Decision.Kind.LEAVE, false, Set.of());
        double less = costs.lessLeft(
                        Objects.requireNonNull(rules.causes().get(lock)).component())
                .getAmount()
                .doubleValue();
        assertThat(less).isGreaterThan(400);
        assertThat(reckoning.ending(Decision.Kind.LEAVE, false, Set.of(lock)) - sound)
                .isCloseTo(less, within(.01));
    }

    /** Two faults behind the same back are reached by one opening, and the phone comes back once. */
    @ParameterizedTest
    @ValueSource(strings = {"book", "clamshell"})
    void faultsThatAreLeftTogetherShareOpeningAndReturn(String family) {
        Reckoning reckoning = reckoning(family);
        List<Cause> inside = reckoning.counted().stream()
                .filter(c -> reckoning.parts(c.component()).stream()
                        .anyMatch(p -> !rules.pathTo(p.access()).isEmpty()))
                .limit(2)
                .toList();
        Set<String> both = Set.of(inside.get(0).id(), inside.get(1).id());
        double apart = both.stream()
                .mapToDouble(c -> reckoning.ending(Decision.Kind.LEAVE, false, Set.of(c)))
                .sum();
        double failure = shop.priceOfFailure().getAmount().doubleValue();
        assertThat(reckoning.ending(Decision.Kind.LEAVE, false, both)).isLessThan(apart - failure);
    }
}
