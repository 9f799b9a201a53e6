package hingewise.wizard;

import hingewise.assessment.Assessor;
import hingewise.costing.csv.PriceBookReader;
import hingewise.costing.yaml.ShopReader;
import hingewise.intake.ListingReader;
import hingewise.intake.store.Readers;
import hingewise.rulebook.RuleBook;
import hingewise.rulebook.yaml.Reading;
import hingewise.rulebook.yaml.RuleBookReader;
import hingewise.rulebook.yaml.RuleFiles;
import hingewise.wizard.model.Background;
import hingewise.wizard.model.Setup;
import hingewise.wizard.model.ShelfReader;
import hingewise.wizard.model.WizardModel;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;

/** A bench to test at: the shipped rule book and its invented prices, at a fixed time. */
public final class Bench {
    public static final Instant NOW = Instant.parse("2026-03-02T09:30:00Z");

    /** Read once: it never changes, and reading takes longer than most tests. */
    private static final Assessor ASSESSOR = read();

    private Bench() {}

    public static RuleBook rules() {
        return ASSESSOR.rules();
    }

    public static Assessor assessor() {
        return ASSESSOR;
    }

    /** A reader of texts by the shipped rule book. */
    public static ListingReader reader(RuleBook rules) {
        return Readers.of(RuleFiles.SHIPPED, rules, () -> {});
    }

    private static Assessor read() {
        Reading reading = RuleBookReader.readShipped();
        RuleBook rules = reading.ruleBook().orElseThrow(() -> new AssertionError(reading.problems()));
        var prices = PriceBookReader.readShipped(rules);
        return new Assessor(
                rules,
                prices.priceBook().orElseThrow(() -> new AssertionError(prices.problems())),
                ShopReader.readShipped(rules).shop().orElseThrow());
    }

    /** The money is left waiting: it takes longer than most tests. */
    public static Setup setup(Path cases, List<Path> demos, Background reckoning, Background keeping) {
        return setup(cases, demos, reckoning, new Later(), keeping);
    }

    public static Setup setup(
            Path cases, List<Path> demos, Background reckoning, Background pricing, Background keeping) {
        return new Setup(
                Bench::assessor,
                Bench::reader,
                () -> ShelfReader.read(cases, demos),
                cases,
                "tester",
                Clock.fixed(NOW, ZoneOffset.UTC),
                reckoning,
                pricing,
                keeping);
    }

    /** A wizard that does everything at once, with its rule book read. */
    public static WizardModel model(Path cases, Path... demos) {
        WizardModel model = new WizardModel(setup(cases, List.of(demos), new Inline(), new Inline()));
        model.load();
        return model;
    }
}
