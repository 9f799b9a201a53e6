package hingewise.intake.sheet;

import hingewise.casefile.Phone;
import hingewise.costing.Shop;
import hingewise.intake.csv.Row;
import hingewise.plain.Quoted;
import hingewise.rulebook.NearestId;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** Turns rows into listings, or says everything that is wrong with a row. For several threads at once. */
final class ListingChecker {
    /** Keeps every sum within what can be shown, and no digits are worked on for nothing. */
    private static final Pattern AMOUNT = Pattern.compile("[0-9]{1,9}(\\.[0-9]{1,9})?");

    private static final int LONGEST_MODEL = 200;

    private final Columns columns;
    private final Set<String> families;
    private final Shop shop;

    ListingChecker(Columns columns, Set<String> families, Shop shop) {
        this.columns = columns;
        this.families = families;
        this.shop = shop;
    }

    /** @throws UnappraisableException with everything that is wrong with the row */
    Listing check(Row row) {
        if (!row.usable()) {
            throw new UnappraisableException(row.problem());
        }
        if (row.cells().size() != columns.names().size()) {
            throw new UnappraisableException("this row has " + row.cells().size() + " cells, not "
                    + columns.names().size() + "; put a text with a comma in double quotes, and see that every quote is"
                    + " closed");
        }
        List<String> problems = new ArrayList<>();
        if (columns.cell(row, Columns.ID).isEmpty()) {
            problems.add("the id is blank; fill it in");
        }
        Optional<Phone> phone = phone(row, problems);
        Optional<Money> price = amount(row, Columns.PRICE, problems);
        Optional<Money> shipping = amount(row, Columns.SHIPPING, problems);
        Optional<Money> quote =
                columns.cell(row, Columns.QUOTE).isPresent() ? amount(row, Columns.QUOTE, problems) : Optional.empty();
        phone.filter(p -> quote.isPresent()).ifPresent(p -> checkService(p, problems));
        if (!problems.isEmpty() || phone.isEmpty() || price.isEmpty() || shipping.isEmpty()) {
            throw new UnappraisableException(String.join("; ", problems));
        }
        String text = columns.cell(row, Columns.TEXT).orElse("");
        return new Listing(row.line(), row.cells(), text, phone.get(), price.get(), shipping.get(), quote);
    }

    private Optional<Phone> phone(Row row, List<String> problems) {
        Optional<String> family = columns.cell(row, Columns.FAMILY);
        // Nobody who reads a label minds case and blanks, and so equal phones are equal.
        Optional<String> model = columns.cell(row, Columns.MODEL)
                .map(m -> m.toLowerCase(Locale.ROOT).replaceAll("\\s+", " "));
        if (family.isPresent() && !families.contains(family.get())) {
            problems.add(
                    "no family is called " + Quoted.of(family.get()) + ". " + NearestId.advice(family.get(), families));
            return Optional.empty();
        }
        if (model.isPresent() && model.get().length() > LONGEST_MODEL) {
            problems.add("the model " + Quoted.of(model.get()) + " has more than " + LONGEST_MODEL
                    + " characters; shorten it");
            return Optional.empty();
        }
        if (family.isEmpty() && model.isEmpty()) {
            problems.add("neither family nor model is filled in; fill in one");
            return Optional.empty();
        }
        Optional<Phone> phone = family.isPresent()
                ? Optional.of(new Phone(family.get(), model.orElse("")))
                : shop.models().stream()
                        .filter(m -> m.label().isPresent() && fits(m.label().get(), model.get()))
                        .findFirst()
                        .map(m -> new Phone(m.family(), model.get()));
        if (phone.isEmpty()) {
            problems.add("no model of the shop file fits " + Quoted.of(model.get())
                    + "; add it there, or give the family here");
        } else if (shop.model(phone.get()).isEmpty()) {
            problems.add("the shop file says nothing of what " + Quoted.of(model.orElse(family.orElse("")))
                    + " brings; add a model to it");
        }
        return phone;
    }

    private static boolean fits(String label, String model) {
        return model.contains(label.toLowerCase(Locale.ROOT));
    }

    private void checkService(Phone phone, List<String> problems) {
        if (shop.model(phone).isPresent()
                && shop.model(phone).flatMap(Shop.Model::service).isEmpty()) {
            problems.add("there is a quote, but the shop file does not say what the maker's service renews for this"
                    + " model; add it there, or leave the quote blank");
        }
    }

    private Optional<Money> amount(Row row, String column, List<String> problems) {
        CurrencyUnit currency = shop.currency();
        Optional<String> cell = columns.cell(row, column);
        if (cell.isEmpty()) {
            problems.add("the " + column + " is blank; fill it in, 0 if it is nothing");
            return Optional.empty();
        }
        if (!AMOUNT.matcher(cell.get()).matches()) {
            problems.add("the " + column + " " + Quoted.of(cell.get()) + " is not an amount in plain digits; write it"
                    + " as in 12.50, in " + currency + " and without its sign");
            return Optional.empty();
        }
        BigDecimal amount = new BigDecimal(cell.get());
        if (amount.scale() > currency.getDecimalPlaces()) {
            problems.add("the " + column + " " + Quoted.of(cell.get()) + " has " + amount.scale() + " decimals, but "
                    + currency + " has " + currency.getDecimalPlaces() + " (ISO 4217); round it");
            return Optional.empty();
        }
        return Optional.of(Money.of(currency, amount));
    }
}
