package hingewise.wizard;

import hingewise.assessment.Assessor;
import hingewise.costing.Offer;
import hingewise.costing.PriceBook;
import hingewise.rulebook.Part;
import hingewise.rulebook.RuleBook;
import hingewise.rulebook.yaml.Reading;
import hingewise.rulebook.yaml.RuleBookReader;
import hingewise.wizard.model.Background;
import hingewise.wizard.model.Setup;
import hingewise.wizard.model.ShelfReader;
import hingewise.wizard.model.WizardModel;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** A bench to test at: the shipped rule book with invented prices, at a fixed time. */
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

    private static Assessor read() {
        Reading reading = RuleBookReader.readShipped();
        RuleBook rules = reading.ruleBook().orElseThrow(() -> new AssertionError(reading.problems()));
        return new Assessor(rules, prices(rules));
    }

    /** Every part at a made-up price from a made-up supplier. */
    public static PriceBook prices(RuleBook rules) {
        List<Offer> offers = new ArrayList<>();
        for (Part part : rules.parts().values()) {
            int price = switch (part.form()) {
                case ASSEMBLY -> 210;
                case SINGLE -> 24;
                case CONSUMABLE -> 4;
            };
            offers.add(new Offer(
                    part.id(),
                    "Invented Parts Nord",
                    Money.of(CurrencyUnit.EUR, BigDecimal.valueOf(price + offers.size())),
                    "service",
                    3,
                    .03));
        }
        return new PriceBook(offers);
    }

    public static Setup setup(Path cases, List<Path> demos, Background reckoning, Background keeping) {
        return new Setup(
                Bench::assessor,
                () -> ShelfReader.read(cases, demos),
                cases,
                "tester",
                Clock.fixed(NOW, ZoneOffset.UTC),
                reckoning,
                keeping);
    }

    /** A wizard that does everything at once, with its rule book read. */
    public static WizardModel model(Path cases, Path... demos) {
        WizardModel model = new WizardModel(setup(cases, List.of(demos), new Inline(), new Inline()));
        model.load();
        return model;
    }
}
