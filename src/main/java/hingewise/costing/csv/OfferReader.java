package hingewise.costing.csv;

import hingewise.costing.Offer;
import hingewise.plain.Quoted;
import hingewise.rulebook.NearestId;
import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** Reads rows as offers and tells everything that is wrong with each. */
final class OfferReader {
    /** Keeps every sum of prices within what can be shown, and no digits are worked on for nothing. */
    private static final Pattern AMOUNT = Pattern.compile("[0-9]{1,9}(\\.[0-9]{1,9})?");

    private static final Pattern AMOUNT_WITH_COMMA = Pattern.compile("[0-9.]{1,12},[0-9]{1,9}");
    private static final Pattern NEGATIVE = Pattern.compile("[-−][0-9.,]+");
    private static final Pattern DAYS = Pattern.compile("[0-9]{1,3}");
    private static final int MOST_DAYS = 365;
    private static final Pattern CHANCE = Pattern.compile("0|0?\\.[0-9]{1,9}|0\\.");
    private static final double LARGEST_CHANCE = .999;

    /** Codes such as XXX and XAU are in the standard too but are no money one pays with. */
    private static final Map<String, CurrencyUnit> CURRENCIES = CurrencyUnit.registeredCurrencies().stream()
            .filter(c -> !c.isPseudoCurrency())
            .collect(Collectors.toUnmodifiableMap(CurrencyUnit::getCode, c -> c));

    private final Header header;
    private final Vocabulary known;
    private final Problems problems;
    private final Map<List<String>, Integer> lines = new HashMap<>();

    OfferReader(Header header, Vocabulary known, Problems problems) {
        this.header = header;
        this.known = known;
        this.problems = problems;
    }

    /** Whether the row is of a part and a grade that are known, in this currency. */
    boolean fits(Rows.Row row, String currency) {
        return row.cells().size() == header.positions().size()
                && known.parts().contains(header.cell(row, "part"))
                && known.grades().contains(header.cell(row, "grade"))
                && header.cell(row, "currency").equals(currency);
    }

    /** The offer of this row, or nothing and its problems. */
    Optional<Offer> read(Rows.Row row) {
        int columns = header.positions().size();
        if (row.cells().size() != columns) {
            problems.add(
                    row.line(),
                    "this row has " + row.cells().size() + " cells, not " + columns
                            + (row.cells().size() > columns
                                    ? "; write a price with a point, and a text with a comma in double quotes"
                                    : "; fill in what is missing"));
            return Optional.empty();
        }
        Optional<String> part = part(row);
        Optional<String> supplier = supplier(row);
        Optional<Money> price = price(row);
        Optional<String> grade = grade(row);
        Optional<Integer> days = days(row);
        Optional<Double> bad = badOnArrival(row);
        if (part.isEmpty()
                || supplier.isEmpty()
                || price.isEmpty()
                || grade.isEmpty()
                || days.isEmpty()
                || bad.isEmpty()) {
            return Optional.empty();
        }
        Integer before = lines.putIfAbsent(List.of(part.get(), supplier.get(), grade.get()), row.line());
        if (before != null) {
            problems.add(
                    row.line(),
                    "line " + before + " has the same part, supplier and grade already; keep the one that is right");
            return Optional.empty();
        }
        return Optional.of(new Offer(part.get(), supplier.get(), price.get(), grade.get(), days.get(), bad.get()));
    }

    private Optional<String> part(Rows.Row row) {
        String part = header.cell(row, "part");
        return known.parts().contains(part)
                ? Optional.of(part)
                : wrong(row, "no part is called " + Quoted.of(part) + ". " + NearestId.advice(part, known.parts()));
    }

    private Optional<String> supplier(Rows.Row row) {
        String supplier = header.cell(row, "supplier");
        if (supplier.isBlank()) {
            return wrong(row, "the supplier is blank; fill it in");
        }
        return Quoted.line(supplier).equals(supplier)
                ? Optional.of(supplier)
                : wrong(
                        row,
                        "the supplier " + Quoted.of(supplier)
                                + " holds a line break or a character that cannot be seen; remove it, and see that"
                                + " every quote is closed");
    }

    private Optional<Money> price(Rows.Row row) {
        Optional<CurrencyUnit> currency = currency(row);
        String price = header.cell(row, "price");
        if (AMOUNT_WITH_COMMA.matcher(price).matches()) {
            return wrong(row, "the price " + Quoted.of(price) + " has a comma; write a point, as in 12.50");
        }
        if (NEGATIVE.matcher(price).matches()) {
            return wrong(row, "the price " + Quoted.of(price) + " is negative; write what is paid, 0 or more");
        }
        if (!AMOUNT.matcher(price).matches()) {
            return wrong(
                    row,
                    "the price " + Quoted.of(price)
                            + " is not an amount below a thousand million in plain digits; write it as in 12.50");
        }
        BigDecimal amount = new BigDecimal(price);
        if (currency.isPresent() && amount.scale() > currency.get().getDecimalPlaces()) {
            return wrong(
                    row,
                    "the price " + Quoted.of(price) + " has " + amount.scale() + " decimals, but " + currency.get()
                            + " has " + currency.get().getDecimalPlaces() + " (ISO 4217); round it");
        }
        return currency.map(c -> Money.of(c, amount));
    }

    private Optional<CurrencyUnit> currency(Rows.Row row) {
        String code = header.cell(row, "currency");
        return Optional.ofNullable(CURRENCIES.get(code))
                .or(() -> wrong(
                        row,
                        "the currency " + Quoted.of(code)
                                + " is not one of ISO 4217; write three capitals, as in EUR"));
    }

    private Optional<String> grade(Rows.Row row) {
        String grade = header.cell(row, "grade");
        return known.grades().contains(grade)
                ? Optional.of(grade)
                : wrong(row, "no grade is called " + Quoted.of(grade) + ". " + NearestId.advice(grade, known.grades()));
    }

    private Optional<Integer> days(Rows.Row row) {
        String days = header.cell(row, "days");
        return DAYS.matcher(days).matches() && Integer.parseInt(days) <= MOST_DAYS
                ? Optional.of(Integer.valueOf(days))
                : wrong(row, "the days " + Quoted.of(days) + " are not a whole number from 0 to 365; correct them");
    }

    private Optional<Double> badOnArrival(Rows.Row row) {
        String chance = header.cell(row, "bad-on-arrival");
        if (CHANCE.matcher(chance).matches() && Double.parseDouble(chance) <= LARGEST_CHANCE) {
            return Optional.of(Double.valueOf(chance));
        }
        return wrong(
                row,
                "the chance of arriving bad " + Quoted.of(chance)
                        + " is not a number from 0 to .999; write 5 % as 0.05");
    }

    private <T> Optional<T> wrong(Rows.Row row, String what) {
        problems.add(row.line(), what);
        return Optional.empty();
    }
}
