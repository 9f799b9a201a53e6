package hingewise.costing.csv;

import hingewise.costing.Offer;
import hingewise.plain.Quoted;
import hingewise.rulebook.NearestId;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
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
    private static final Pattern COUNT = Pattern.compile("[0-9]{1,3}");
    private static final int MOST_DAYS = 365;
    private static final Pattern CHANCE = Pattern.compile("0|0?\\.[0-9]{1,9}|0\\.");
    private static final double LARGEST_CHANCE = .999;

    /** Codes such as XXX and XAU are in the standard too but are no money one pays with. */
    private static final Map<String, CurrencyUnit> CURRENCIES = CurrencyUnit.registeredCurrencies().stream()
            .filter(c -> !c.isPseudoCurrency())
            .collect(Collectors.toUnmodifiableMap(CurrencyUnit::getCode, c -> c));

    private final Header header;
    private final Vocabulary known;
    private final LocalDate today;
    private final Problems problems;
    private final Map<List<String>, Integer> lines = new HashMap<>();

    OfferReader(Header header, Vocabulary known, LocalDate today, Problems problems) {
        this.header = header;
        this.known = known;
        this.today = today;
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
        Optional<Offer.Limits> limits = limits(row);
        if (part.isEmpty()
                || supplier.isEmpty()
                || price.isEmpty()
                || grade.isEmpty()
                || days.isEmpty()
                || bad.isEmpty()
                || limits.isEmpty()) {
            return Optional.empty();
        }
        Integer before = lines.putIfAbsent(
                List.of(
                        part.get(),
                        supplier.get(),
                        grade.get(),
                        Integer.toString(limits.get().from()),
                        limits.get().variant(),
                        limits.get().colour()),
                row.line());
        if (before != null) {
            problems.add(
                    row.line(),
                    "line " + before
                            + " has the same part, supplier and grade already (and the same limits, if any); keep the"
                            + " one that is right");
            return Optional.empty();
        }
        return Optional.of(
                new Offer(part.get(), supplier.get(), price.get(), grade.get(), days.get(), bad.get(), limits.get()));
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

    private Optional<Offer.Limits> limits(Rows.Row row) {
        Optional<Integer> from = count(row, "from-quantity", 1);
        Optional<Integer> available = count(row, "available", 0);
        boolean valid = inForce(row);
        Optional<String> variant = plain(row, "variant");
        Optional<String> colour = plain(row, "colour");
        if (from.isEmpty() || available.isEmpty() || !valid || variant.isEmpty() || colour.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Offer.Limits(
                header.optional(row, "from-quantity").isBlank() ? 1 : from.get(),
                header.optional(row, "available").isBlank() ? OptionalInt.empty() : OptionalInt.of(available.get()),
                variant.get(),
                colour.get()));
    }

    /** A count, or 0 where the cell is blank. */
    private Optional<Integer> count(Rows.Row row, String column, int least) {
        String count = header.optional(row, column);
        if (count.isBlank()) {
            return Optional.of(0);
        }
        return COUNT.matcher(count).matches() && Integer.parseInt(count) >= least
                ? Optional.of(Integer.valueOf(count))
                : wrong(
                        row,
                        "\"" + column + "\" is " + Quoted.of(count) + ", not a whole number from " + least
                                + " to 999; correct it, or leave it blank");
    }

    private Optional<String> plain(Rows.Row row, String column) {
        String text = header.optional(row, column);
        return Quoted.line(text).equals(text)
                ? Optional.of(text)
                : wrong(
                        row,
                        "the " + column + " " + Quoted.of(text) + " holds a character that cannot be seen; remove it");
    }

    private boolean inForce(Rows.Row row) {
        String date = header.optional(row, "valid-until");
        if (date.isBlank()) {
            return true;
        }
        try {
            if (LocalDate.parse(date).isBefore(today)) {
                wrong(
                        row,
                        "this offer ended on " + date + ", and today is " + today + "; ask again, or remove the row");
                return false;
            }
            return true;
        } catch (DateTimeParseException e) {
            wrong(row, "the date " + Quoted.of(date) + " is not one; write it as in " + today);
            return false;
        }
    }

    private <T> Optional<T> wrong(Rows.Row row, String what) {
        problems.add(row.line(), what);
        return Optional.empty();
    }
}
