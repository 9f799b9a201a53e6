package hingewise.terminal;

import hingewise.assessment.Assessor;
import hingewise.costing.PriceBook;
import hingewise.costing.Shop;
import hingewise.rulebook.RuleBook;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;

/** The price book and the shop's own figures to reckon with. */
final class FiguresOption {
    @Option(names = "--prices", paramLabel = "FILE", description = "Use this price book.")
    private Optional<Path> prices = Optional.empty();

    @Option(names = "--shop", paramLabel = "FILE", description = "Use the shop's own figures in this file.")
    private Optional<Path> shop = Optional.empty();

    /** Whether prices or figures are the invented ones that come with the program. */
    boolean invented() {
        return prices.isEmpty() || shop.isEmpty();
    }

    PriceBook prices(RuleBook rules) {
        return Inputs.prices(prices, rules);
    }

    Shop shop(RuleBook rules) {
        return Inputs.shop(shop, rules);
    }

    Assessor assessor(RuleBook rules) {
        return new Assessor(rules, prices(rules), shop(rules));
    }
}
