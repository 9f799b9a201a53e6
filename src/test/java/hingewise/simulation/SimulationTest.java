package hingewise.simulation;

import static org.assertj.core.api.Assertions.assertThat;

import hingewise.costing.PriceBook;
import hingewise.costing.Shop;
import hingewise.costing.csv.PriceBookReader;
import hingewise.costing.yaml.ShopReader;
import hingewise.rulebook.RuleBook;
import hingewise.rulebook.yaml.RuleBookReader;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.junit.jupiter.api.Test;

/** What must hold of any such comparison; the figures themselves are printed by the command. */
class SimulationTest {
    private static final int STARTS = 6;
    private static final int PHONES = 2;
    private static final RuleBook RULES =
            RuleBookReader.readShipped().ruleBook().orElseThrow();
    private static final PriceBook PRICES =
            PriceBookReader.readShipped(RULES).priceBook().orElseThrow();
    private static final Shop SHOP = ShopReader.readShipped(RULES).shop().orElseThrow();

    private static Comparison under(int starts, double noise, int threads) throws InterruptedException {
        ExecutorService workers = Executors.newFixedThreadPool(threads);
        try {
            return new Simulation(RULES, PRICES, SHOP, starts, PHONES, 1).under(noise, workers, () -> {});
        } finally {
            workers.shutdownNow();
        }
    }

    /** A mean may be off by chance: three standard errors. */
    @Test
    void noHabitCostsLessThanThePlanAndNothingLessThanKnowingAll() throws InterruptedException {
        Comparison c = under(STARTS, 0, 2);
        assertThat(c.cases() + c.setAside()).isEqualTo(STARTS * PHONES);
        assertThat(c.cases()).isPositive();
        assertThat(c.rows()).hasSameSizeAs(Manner.values()).allSatisfy(r -> {
            assertThat(r.more().mean())
                    .as("%s more than the plan, seed 1", r.manner())
                    .isGreaterThanOrEqualTo(-3 * r.more().error());
            assertThat(r.cost().mean())
                    .as("%s beside knowing all, seed 1", r.manner())
                    .isGreaterThan(c.knowing().mean());
            assertThat(r.needless()).isLessThanOrEqualTo(r.fitted());
            assertThat(r.inVain()).isLessThanOrEqualTo(r.openings());
        });
    }

    @Test
    void theSameSeedGivesTheSameTableOnAnyNumberOfThreads() throws InterruptedException {
        assertThat(under(2, .3, 2)).isEqualTo(under(2, .3, 1));
    }

    @Test
    void throwsOfTheSameNameAreTheSameAndOthersAreEvenlySpread() {
        Chance chance = new Chance(7);
        assertThat(chance.of("a").of(3).thrown())
                .isEqualTo(new Chance(7).of("a").of(3).thrown())
                .isNotEqualTo(chance.of("a").of(4).thrown())
                .isNotEqualTo(chance.of("b").of(3).thrown());
        double sum = 0;
        for (int i = 0; i < 10_000; i++) {
            sum += chance.of("mean").of(i).thrown();
        }
        // Five standard errors of a mean of 10,000 even throws.
        assertThat(sum / 10_000).as("seed 7").isBetween(.5 - .0145, .5 + .0145);
    }
}
