package hingewise.review;

import hingewise.casefile.Phone;
import hingewise.costing.PriceBook;
import hingewise.costing.Shop;
import hingewise.costing.csv.PriceBookReader;
import hingewise.costing.yaml.ShopReader;
import hingewise.intake.store.Readers;
import hingewise.intake.csv.Encoding;
import hingewise.intake.csv.Row;
import hingewise.intake.csv.RowReader;
import hingewise.intake.sheet.Appraisal;
import hingewise.intake.sheet.AssessedAppraiser;
import hingewise.intake.sheet.Claims;
import hingewise.intake.sheet.ListingClaims;
import hingewise.rulebook.RuleBook;
import hingewise.rulebook.yaml.RuleBookReader;
import hingewise.rulebook.yaml.RuleFiles;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import org.joda.money.Money;

/**
 * How far expected profits of the demo listings move, relative to one another, when all numbers of the rule book are
 * disturbed, as a share of the profits' own spread: what the correction of a sheet must reckon with. What moves all
 * listings alike is left out, for it makes none look better than another.
 */
public final class DoubtStudy {
    private static final int SEED = 5;

    private DoubtStudy() {}

    /** @param arguments standard deviation of the noise in log10-odds, and how many disturbed rule books */
    public static void main(String[] arguments) throws IOException {
        double deviation = Double.parseDouble(arguments[0]);
        int books = Integer.parseInt(arguments[1]);
        RuleBook rules = RuleBookReader.readShipped().ruleBook().orElseThrow();
        List<Row> rows = rows();
        List<Appraisal> undisturbed = appraised(rules, rules, rows);
        double spreads = undisturbed.stream()
                .mapToDouble(a -> Math.pow(a.spread().getAmount().doubleValue(), 2))
                .sum();
        Random random = new Random(SEED);
        double errors = 0;
        for (int book = 0; book < books; book++) {
            Noise noise = Noise.drawn(Numbers.names(rules), random);
            List<Appraisal> disturbed = appraised(rules, noise.on(rules, deviation), rows);
            double[] moved = new double[rows.size()];
            double all = 0;
            for (int i = 0; i < moved.length; i++) {
                moved[i] = disturbed
                        .get(i)
                        .profit()
                        .minus(undisturbed.get(i).profit())
                        .getAmount()
                        .doubleValue();
                all += moved[i] / moved.length;
            }
            for (double m : moved) {
                errors += (m - all) * (m - all) * moved.length / (moved.length - 1);
            }
        }
        System.out.printf(
                Locale.ROOT,
                "noise %.2f, %d rule books, %d listings: moved by %.3f of their spread%n",
                deviation,
                books,
                rows.size(),
                Math.sqrt(errors / books / spreads));
    }

    private static List<Row> rows() throws IOException {
        List<Row> rows = new ArrayList<>();
        try (RowReader reader = new RowReader(Path.of("demo-cases/listings.csv"), Encoding.UTF_8, 0, 1)) {
            for (Optional<Row> row = reader.next(); row.isPresent(); row = reader.next()) {
                rows.add(row.get());
            }
        }
        return rows.subList(1, rows.size());
    }

    /** Texts are read by the undisturbed rule book; only the thinking is disturbed. */
    private static List<Appraisal> appraised(RuleBook rules, RuleBook thinking, List<Row> rows) {
        Shop shop = ShopReader.readShipped(rules).shop().orElseThrow();
        PriceBook prices = PriceBookReader.readShipped(rules).priceBook().orElseThrow();
        ListingClaims reader = new ListingClaims(rules, Readers.of(RuleFiles.SHIPPED, rules, () -> {}));
        AssessedAppraiser appraiser = new AssessedAppraiser(thinking, prices, shop);
        return rows.stream()
                .map(row -> {
                    Phone phone = new Phone(row.cells().get(4), row.cells().get(5));
                    return appraiser
                            .prospect(new Claims(
                                    phone, reader.read(phone, row.cells().get(1)), Optional.empty()))
                            .at(
                                    money(shop, row.cells().get(2)),
                                    money(shop, row.cells().get(3)));
                })
                .toList();
    }

    private static Money money(Shop shop, String amount) {
        return Money.parse(shop.currency() + " " + amount);
    }
}
