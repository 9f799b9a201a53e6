package hingewise.assessment;

import static org.assertj.core.api.Assertions.assertThat;

import hingewise.casefile.CaseFile;
import hingewise.costing.PriceBook;
import hingewise.costing.Shop;
import hingewise.costing.csv.PriceBookReader;
import hingewise.costing.yaml.ShopReader;
import hingewise.review.Sensitivity;
import hingewise.review.SensitivityStudy;
import hingewise.rulebook.RuleBook;
import hingewise.rulebook.yaml.RuleBookReader;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * How firmly whole cases keep their answers when every number of the shipped rules is moved at once by noise on its
 * log10-odds. Method: Henrion and others 1996, UAI. Of the held-out part only the sums are printed: its cases are not
 * for mending.
 */
@Tag("slow")
class VignetteSensitivityTest {
    private static final int DRAWS = 200;
    private static final long SEED = 1;

    private final RuleBook rules = RuleBookReader.readShipped().ruleBook().orElseThrow();
    private final PriceBook prices =
            PriceBookReader.readShipped(rules).priceBook().orElseThrow();
    private final Shop shop = ShopReader.readShipped(rules).shop().orElseThrow();

    @Test
    void whetherAnythingIsOrderedStaysInNineOfTenDraws() throws IOException, InterruptedException {
        assertThat(kept("mending.yaml")).as("seed %d", SEED).isGreaterThanOrEqualTo(.9);
    }

    @Test
    void inCasesNobodyMendedAfterItStaysNearlyAsOften() throws IOException, InterruptedException {
        assertThat(kept("held-out.yaml")).as("seed %d", SEED).isGreaterThanOrEqualTo(.85);
    }

    /** In how many of the draws with the smaller noise it stays whether anything is ordered, in 0-1. */
    private double kept(String part) throws IOException, InterruptedException {
        SensitivityStudy study = new SensitivityStudy(rules, prices, shop, cases(part), DRAWS, SEED);
        ExecutorService workers =
                Executors.newFixedThreadPool(Runtime.getRuntime().availableProcessors());
        try {
            Sensitivity small = study.under(.3, workers, () -> {});
            print(part, small);
            print(part, study.under(.5, workers, () -> {}));
            return small.sameOrder();
        } finally {
            workers.shutdownNow();
        }
    }

    private static Map<String, CaseFile> cases(String part) throws IOException {
        Map<String, CaseFile> cases = new LinkedHashMap<>();
        for (Vignette v : Vignette.read(part)) {
            cases.put(v.id(), v.caseFile());
        }
        return cases;
    }

    private static void print(String part, Sensitivity s) {
        System.out.printf(
                Locale.ROOT,
                "%s, noise %.1f, %d vignette-draws, per cent that stay: first cause %.1f, first three %.1f,"
                        + " first among three %.1f, first try %.1f, to order or not %.1f%n",
                part,
                s.deviation(),
                s.vignetteDraws(),
                100 * s.sameFirst(),
                100 * s.sameThree(),
                100 * s.amongThree(),
                100 * s.sameTry(),
                100 * s.sameOrder());
        s.influences().forEach(i -> print("first cause", i));
        s.orderInfluences().forEach(i -> print("order", i));
    }

    private static void print(String what, Sensitivity.Influence influence) {
        System.out.printf(Locale.ROOT, "  %s %5.2f %s%n", what, 100 * influence.share(), influence.number());
    }
}
