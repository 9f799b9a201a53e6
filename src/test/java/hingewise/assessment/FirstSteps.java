package hingewise.assessment;

import hingewise.casefile.CaseFile;
import hingewise.costing.PriceBook;
import hingewise.costing.RepairCosts;
import hingewise.costing.Shop;
import hingewise.costing.csv.PriceBookReader;
import hingewise.costing.yaml.ShopReader;
import hingewise.diagnosis.Diagnostician;
import hingewise.planning.Planning;
import hingewise.review.CaseFiles;
import hingewise.rulebook.RuleBook;
import hingewise.rulebook.yaml.RuleBookReader;
import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;

/** Prints in how many cases looking ahead begins otherwise than looking one step far: the act that nets most by itself. */
final class FirstSteps {
    private FirstSteps() {}

    public static void main(String[] arguments) throws IOException {
        RuleBook rules = RuleBookReader.readShipped().ruleBook().orElseThrow();
        PriceBook prices = PriceBookReader.readShipped(rules).priceBook().orElseThrow();
        Shop shop = ShopReader.readShipped(rules).shop().orElseThrow();
        tell(
                "cases of the rule book",
                rules,
                prices,
                shop,
                rules.cases().stream().map(CaseFiles::of).toList());
        tell(
                "told cases",
                rules,
                prices,
                shop,
                Stream.concat(Vignette.read("mending.yaml").stream(), Vignette.read("held-out.yaml").stream())
                        .map(Vignette::caseFile)
                        .toList());
    }

    private static void tell(String what, RuleBook all, PriceBook prices, Shop shop, List<CaseFile> files) {
        int otherwise = 0;
        int onlyAhead = 0;
        int onlyNear = 0;
        for (CaseFile file : files) {
            RuleBook rules = all.of(file.phone().family());
            Planning.Next next = new Planning(
                            rules,
                            new RepairCosts(rules, prices, shop, file.phone()),
                            new Diagnostician(rules).chances(file))
                    .next();
            if (!next.step().equals(next.nearest())) {
                otherwise++;
                onlyAhead += next.nearest().isEmpty() ? 1 : 0;
                onlyNear += next.step().isEmpty() ? 1 : 0;
            }
        }
        System.out.printf(
                "%s: %d; looking ahead begins otherwise in %d (%.0f %%), of which in %d one step ahead nothing seems worth"
                        + " doing, and in %d nothing is%n",
                what, files.size(), otherwise, 100.0 * otherwise / files.size(), onlyAhead, onlyNear);
    }
}
