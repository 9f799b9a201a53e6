package hingewise.costing.yaml;

import hingewise.costing.Shop;
import hingewise.plain.Quoted;
import hingewise.rulebook.yaml.Context;
import hingewise.rulebook.yaml.Fields;
import hingewise.rulebook.yaml.Node;
import hingewise.rulebook.yaml.Place;
import hingewise.rulebook.yaml.Problems;
import hingewise.rulebook.yaml.Range;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** Turns the keys of a shop file into its figures. */
final class ShopFields {
    private static final Node NOTHING = new Node.Mapping(new Place("", 0), "", List.of());

    private final Known known;
    private final CurrencyUnit currency;

    ShopFields(Known known, CurrencyUnit currency) {
        this.known = known;
        this.currency = currency;
    }

    Shop shop(Fields fields) {
        tellCurrency(fields);
        return new Shop(
                currency,
                rates(fields),
                money(fields, "labour-per-hour"),
                money(fields, "price-of-failure"),
                money(fields, "bad-part"),
                block(fields, "buying", this::buying),
                optionalBlock(fields, "returning", this::returning),
                block(fields, "selling", this::selling),
                block(fields, "condition", this::condition),
                models(fields),
                refused(fields),
                suppliers(fields));
    }

    private static void tellCurrency(Fields fields) {
        String code = fields.text("currency");
        if (!code.isEmpty() && Currencies.of(code).isEmpty()) {
            fields.problem("currency", Quoted.of(code) + " is not a currency", "Write an ISO 4217 code such as EUR.");
        }
    }

    private Map<CurrencyUnit, BigDecimal> rates(Fields fields) {
        Map<CurrencyUnit, BigDecimal> rates = new LinkedHashMap<>();
        fields.<BigDecimal>map("rates", (member, all) -> {
                    if (Currencies.of(member.key()).isEmpty()) {
                        fields.context()
                                .problems()
                                .add(
                                        member.place(),
                                        Quoted.of(member.key()) + " is not a currency",
                                        "Write an ISO 4217 code such as EUR.");
                    }
                    fields.values()
                            .number(member.value(), Range.EXCHANGE)
                            .ifPresent(rate -> all.putIfAbsent(member.key(), rate));
                })
                .forEach((code, rate) -> Currencies.of(code).ifPresent(c -> rates.put(c, rate)));
        return rates;
    }

    private Shop.Buying buying(Fields fields) {
        return new Shop.Buying(
                money(fields, "shipping-in"),
                share(fields, "import-tax"),
                money(fields, "margin"),
                fields.number("loss-limit", Range.CHANCE));
    }

    private Shop.Returning returning(Fields fields) {
        return new Shop.Returning(days(fields), money(fields, "shipping"), share(fields, "accepted"));
    }

    private Shop.Selling selling(Fields fields) {
        return new Shop.Selling(
                share(fields, "fee"),
                money(fields, "shipping-out"),
                days(fields),
                share(fields, "loss-per-day"),
                share(fields, "return-rate"),
                money(fields, "return-cost"),
                money(fields, "reserve"));
    }

    private Shop.Condition condition(Fields fields) {
        Map<String, BigDecimal> left = new LinkedHashMap<>(
                byName(fields, "left", "a component", with(known.components(), "otherwise"), n -> share(fields, n)));
        BigDecimal otherwise = left.remove("otherwise");
        if (otherwise == null) {
            fields.problem("left", "\"left\" does not say what any other fault takes off", "Add \"otherwise: …\".");
        }
        return new Shop.Condition(
                share(fields, "opened"),
                byName(fields, "marks", "an observation", known.observations(), n -> share(fields, n)),
                byName(fields, "origin", "a part", known.parts(), n -> origin(fields, n)),
                left,
                otherwise == null ? BigDecimal.ZERO : otherwise);
    }

    private Optional<Map<String, BigDecimal>> origin(Fields fields, Node node) {
        return Fields.read(
                fields.context(),
                node instanceof Node.Mapping m && !known.strict() ? m.only(known.grades()) : node,
                Quoted.of(node.under()),
                f -> {
                    Map<String, BigDecimal> byGrade = new LinkedHashMap<>();
                    known.grades()
                            .forEach(g ->
                                    f.optional(g).flatMap(n -> share(f, n)).ifPresent(share -> byGrade.put(g, share)));
                    return byGrade;
                });
    }

    private List<Shop.Model> models(Fields fields) {
        fields.required("models"); // an empty block is a shop that sells nothing
        return new ArrayList<>(fields.<Shop.Model>map(
                        "models",
                        (member, all) -> Fields.read(
                                        fields.context(),
                                        member.value(),
                                        "model " + Quoted.of(member.key()),
                                        f -> model(member.key(), f))
                                .flatMap(m -> m)
                                .ifPresent(m -> all.putIfAbsent(m.id(), m)))
                .values());
    }

    private Optional<Shop.Model> model(String id, Fields fields) {
        String family = fields.text("family");
        boolean mine = known.families().contains(family);
        if (!mine && known.strict() && !family.isEmpty()) {
            fields.context()
                    .problems()
                    .unknown(fields.optional("family").orElseThrow().place(), family, "a family", known.families());
        }
        Shop.Model model = new Shop.Model(
                id,
                family,
                fields.optional("label").flatMap(fields.values()::text),
                money(fields, "resale"),
                share(fields, "spread"),
                money(fields, "as-is"),
                byName(fields, "as-is-less", "a component", known.components(), n -> money(fields, n)),
                byName(fields, "salvage", "a part", known.parts(), n -> money(fields, n)),
                fields.number("strip-minutes", Range.MINUTES).intValue(),
                optionalBlock(fields, "service", this::service));
        return mine || known.strict() ? Optional.of(model) : Optional.empty();
    }

    private Shop.Service service(Fields fields) {
        return new Shop.Service(
                money(fields, "quote"),
                fields.required("renews")
                        .map(n -> names(fields, n, "a component", known.components()))
                        .orElse(Set.of()),
                days(fields),
                money(fields, "shipping"),
                money(fields, "refusal"),
                share(fields, "refuses-opened"),
                byName(fields, "refuses-after", "a history", known.histories(), n -> share(fields, n)));
    }

    private Map<String, Set<String>> refused(Fields fields) {
        return byName(
                fields,
                "refused-grades",
                "a part",
                known.parts(),
                n -> Optional.of(names(fields, n, "a grade of part", known.grades())));
    }

    private Map<String, Shop.Supplier> suppliers(Fields fields) {
        return fields.map(
                "suppliers",
                (member, all) -> Fields.read(
                                fields.context(),
                                member.value(),
                                "supplier " + Quoted.of(member.key()),
                                f -> new Shop.Supplier(money(f, "shipping"), money(f, "minimum-order")))
                        .ifPresent(s -> all.putIfAbsent(member.key(), s)));
    }

    private static Set<String> with(Set<String> names, String more) {
        Set<String> all = new LinkedHashSet<>(names);
        all.add(more);
        return all;
    }

    private Money money(Fields fields, String key) {
        return Money.of(currency, rounded(fields.money(key)));
    }

    private Optional<Money> money(Fields fields, Node node) {
        return fields.values().money(node).map(amount -> Money.of(currency, rounded(amount)));
    }

    /** Too many decimals were told as a problem already. */
    private BigDecimal rounded(BigDecimal amount) {
        return amount.setScale(currency.getDecimalPlaces(), RoundingMode.HALF_EVEN);
    }

    private static BigDecimal share(Fields fields, String key) {
        return fields.number(key, Range.SHARE);
    }

    private static Optional<BigDecimal> share(Fields fields, Node node) {
        return fields.values().number(node, Range.SHARE);
    }

    private static int days(Fields fields) {
        return fields.number("days", Range.DAYS).intValue();
    }

    /** A block that must be there; when it is not, that is told, and zeros stand in. */
    private static <T> T block(Fields fields, String key, Function<Fields, T> body) {
        return fields.required(key)
                .flatMap(n -> Fields.read(fields.context(), n, Quoted.of(key), body))
                .or(() -> Fields.read(Context.beside(new Problems(), 0), NOTHING, key, body))
                .orElseThrow();
    }

    private static <T> Optional<T> optionalBlock(Fields fields, String key, Function<Fields, T> body) {
        return fields.optional(key).flatMap(n -> Fields.read(fields.context(), n, Quoted.of(key), body));
    }

    /** A block whose keys are names of the rule book. */
    private <T> Map<String, T> byName(
            Fields fields, String key, String noun, Set<String> names, Function<Node, Optional<T>> value) {
        return fields.map(key, (member, all) -> {
            if (names.contains(member.key())) {
                value.apply(member.value()).ifPresent(v -> all.putIfAbsent(member.key(), v));
            } else if (known.strict()) {
                fields.context().problems().unknown(member.place(), member.key(), noun, names);
            }
        });
    }

    /** A list of names of the rule book. */
    private Set<String> names(Fields fields, Node node, String noun, Set<String> names) {
        Set<String> found = new LinkedHashSet<>();
        if (!(node instanceof Node.Sequence list)) {
            fields.values()
                    .problem(
                            node,
                            Quoted.of(node.under()) + " is " + node.form() + ", where a list should be",
                            "Write it in brackets: [first, second].");
            return found;
        }
        for (Node item : list.items()) {
            Optional<String> name = fields.values().scalar(item, noun);
            if (name.isPresent() && names.contains(name.get())) {
                found.add(name.get());
            } else if (name.isPresent() && known.strict()) {
                fields.context().problems().unknown(item.place(), name.get(), noun, names);
            }
        }
        return found;
    }
}
