package hingewise.costing.yaml;

import hingewise.costing.Shop;
import hingewise.plain.Quoted;
import hingewise.rulebook.RuleBook;
import hingewise.rulebook.yaml.Context;
import hingewise.rulebook.yaml.Fields;
import hingewise.rulebook.yaml.Node;
import hingewise.rulebook.yaml.Place;
import hingewise.rulebook.yaml.Problem;
import hingewise.rulebook.yaml.Problems;
import hingewise.rulebook.yaml.Refusal;
import hingewise.rulebook.yaml.Source;
import hingewise.rulebook.yaml.TreeParser;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.joda.money.CurrencyUnit;

/** Reads a shop's own figures from one YAML file, such as {@code demo-cases/shop.yaml}, which says what each means. */
public final class ShopReader {
    private static final String SHIPPED = "demo-cases/shop.yaml";
    private static final String FORMAT = "1";

    private ShopReader() {}

    /**
     * The figures in this file.
     *
     * @param rules the rule book whose parts, components and observations it may name
     */
    public static ShopReading read(Path file, RuleBook rules) {
        String name = Quoted.line(file.toString());
        Problems problems = new Problems();
        try {
            return read(Source.read(name, file), rules, Known.of(rules, true), problems);
        } catch (Refusal refusal) {
            refusal.tell(problems);
            return failed(problems);
        }
    }

    /**
     * The invented figures that come with the program. They were written for the rule book that comes with it; of
     * another one they are reckoned with for what both know.
     */
    public static ShopReading readShipped(RuleBook rules) {
        Problems problems = new Problems();
        try (InputStream in = ShopReader.class.getResourceAsStream("/" + SHIPPED)) {
            if (in == null) {
                throw new Refusal(
                        new Place(SHIPPED, 0),
                        "the figures that come with the program are missing",
                        "Install it again, or name a shop file of your own.");
            }
            return read(Source.read(SHIPPED, in), rules, Known.of(rules, false), problems);
        } catch (IOException e) {
            problems.add(new Place(SHIPPED, 0), "the file cannot be read from the program", "Install it again.");
        } catch (Refusal refusal) {
            refusal.tell(problems);
        }
        return failed(problems);
    }

    private static ShopReading read(Source source, RuleBook rules, Known known, Problems problems) throws Refusal {
        Optional<Node> tree = TreeParser.parse(source);
        Place top = new Place(source.name(), 1);
        if (tree.isEmpty() || !(tree.get() instanceof Node.Mapping root)) {
            throw new Refusal(
                    top,
                    "the file holds " + tree.map(Node::form).orElse("nothing") + ", where a shop's figures should be",
                    "Start from a copy of " + SHIPPED + ".");
        }
        Optional<CurrencyUnit> currency = root.member("currency")
                .flatMap(m -> m.value() instanceof Node.Scalar s ? Currencies.of(s.text()) : Optional.empty());
        Context context = Context.beside(
                problems, currency.map(CurrencyUnit::getDecimalPlaces).orElse(Integer.MAX_VALUE));
        Optional<Shop> shop = Fields.read(context, root, "the shop", fields -> {
            format(fields);
            return new ShopFields(known, currency.orElse(CurrencyUnit.EUR)).shop(fields);
        });
        CurrencyUnit bench = CurrencyUnit.of(rules.bench().currency());
        if (problems.isEmpty()
                && shop.isPresent()
                && !bench.equals(shop.get().currency())
                && !shop.get().rates().containsKey(bench)) {
            problems.add(
                    root.placeOf("currency"),
                    "the shop reckons in " + shop.get().currency() + " and the rule book in " + bench,
                    "Name a shop file in " + bench + ", or add \"rates: {" + bench + ": …}\", what one " + bench
                            + " is worth.");
        }
        return problems.isEmpty() ? new ShopReading(shop, List.of()) : failed(problems);
    }

    private static void format(Fields fields) {
        String format = fields.text("format");
        if (!format.isEmpty() && !format.equals(FORMAT)) {
            fields.problem(
                    "format",
                    "the format is " + Quoted.of(format) + ", and this program reads only format " + FORMAT,
                    "Write \"format: " + FORMAT + "\" and compare with " + SHIPPED + ".");
        }
    }

    private static ShopReading failed(Problems problems) {
        return new ShopReading(
                Optional.empty(), problems.sorted().stream().map(Problem::text).toList());
    }
}
