package hingewise.terminal;

import hingewise.assessment.Assessor;
import hingewise.costing.PriceBook;
import hingewise.costing.Shop;
import hingewise.rulebook.RuleBook;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Optional;
import picocli.CommandLine.Option;

/** The price book and the shop's own figures to reckon with. */
final class FiguresOption {
    @Option(names = "--prices", paramLabel = "FILE", description = "Use this price book.")
    private Optional<Path> prices = Optional.empty();

    @Option(
            names = "--skip-bad-rows",
            description = "Go on without the rows of the price book that have a problem; they are told all the same.")
    private boolean skipBadRows;

    @Option(names = "--shop", paramLabel = "FILE", description = "Use the shop's own figures in this file.")
    private Optional<Path> shop = Optional.empty();

    /** Whether the prices are the invented ones that come with the program. */
    boolean inventedPrices() {
        return prices.isEmpty();
    }

    /** Whether the shop's figures are the invented ones that come with the program. */
    boolean inventedShop() {
        return shop.isEmpty();
    }

    PriceBook prices(RuleBook rules, Console console) {
        LocalDate today = LocalDate.ofInstant(console.clock().instant(), ZoneOffset.UTC);
        return skipBadRows
                ? Inputs.goodPrices(prices, rules, today, console::complain)
                : Inputs.prices(prices, rules, today);
    }

    Shop shop(RuleBook rules) {
        return Inputs.shop(shop, rules);
    }

    /** The price book that was named. */
    Optional<Path> pricesFile() {
        return prices;
    }

    /** The shop file that was named. */
    Optional<Path> shopFile() {
        return shop;
    }

    Assessor assessor(RuleBook rules, Console console) {
        return new Assessor(rules, prices(rules, console), shop(rules));
    }
}
