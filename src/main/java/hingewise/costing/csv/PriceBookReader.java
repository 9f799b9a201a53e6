package hingewise.costing.csv;

import hingewise.costing.Offer;
import hingewise.costing.PriceBook;
import hingewise.plain.Utf8;
import hingewise.rulebook.RuleBook;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * Reads price books: comma-separated, in UTF-8, a first row naming the columns part, supplier, price, currency, grade
 * (an id of the rule book, such as service or pulled), days and bad-on-arrival in any order, and where wanted from-quantity, available, variant, colour and valid-until. Nothing that is wrong is passed over; all of
 * it is told at once.
 */
public final class PriceBookReader {
    /** The largest price book that is read: 16 MiB. A hundred thousand offers take half of it. */
    public static final int LARGEST = 16 * 1024 * 1024;

    private static final String SHIPPED = "demo-cases/prices.csv";

    private PriceBookReader() {}

    /**
     * The price book in this file.
     *
     * @param rules the rule book whose parts and grades it prices
     * @param today offers that ended before are problems
     */
    public static Reading read(Path file, RuleBook rules, LocalDate today) {
        return read(file, Vocabulary.of(rules), today);
    }

    /**
     * The invented price book that comes with the program. It was written for the rule book that comes with it; of
     * another one it prices what both know, in the same currency.
     */
    public static Reading readShipped(RuleBook rules) {
        return readShipped(Vocabulary.of(rules), rules.bench().currency());
    }

    static Reading read(Path file, Vocabulary known, LocalDate today) {
        String name = file.toString();
        if (Files.isDirectory(file)) {
            return refusal(name, "is a folder; name a price book in it");
        }
        if (Files.exists(file) && !Files.isRegularFile(file)) {
            return refusal(name, "is not an ordinary file; name a price book");
        }
        try (InputStream in = Files.newInputStream(file)) {
            // The size decides first, so that an enormous file costs nothing.
            return Files.size(file) > LARGEST ? tooLarge(name) : read(name, in, known, Optional.empty(), today);
        } catch (NoSuchFileException e) {
            return refusal(name, "there is no such file; check its name and folder");
        } catch (AccessDeniedException e) {
            return refusal(name, "may not be read; change its permissions");
        } catch (IOException e) {
            return refusal(name, "could not be read (" + e.getMessage() + "); try again");
        }
    }

    static Reading readShipped(Vocabulary known, String currency) {
        try (InputStream in = PriceBookReader.class.getResourceAsStream("/" + SHIPPED)) {
            return in == null
                    ? refusal(SHIPPED, "is missing from the program; install it again or name a price book of your own")
                    : read(SHIPPED, in, known, Optional.of(currency), LocalDate.MIN);
        } catch (IOException e) {
            return refusal(SHIPPED, "could not be read from the program (" + e.getMessage() + "); install it again");
        }
    }

    /** @param only when present, rows in another currency or of unknown parts or grades are passed over */
    private static Reading read(String name, InputStream in, Vocabulary known, Optional<String> only, LocalDate today)
            throws IOException {
        byte[] bytes = in.readNBytes(LARGEST + 1);
        if (bytes.length > LARGEST) {
            return tooLarge(name);
        }
        Problems problems = new Problems(name);
        Utf8.Decoded decoded = Utf8.decode(bytes);
        if (!decoded.whole()) {
            problems.add(decoded.lastLine(), "a byte here is not UTF-8; save the file as UTF-8");
            return new Reading(Optional.empty(), Optional.empty(), problems.all());
        }
        List<Rows.Row> rows = Rows.of(decoded.text(), problems);
        boolean divided = problems.all().isEmpty();
        List<Offer> offers = offers(rows, known, only, today, problems);
        List<String> all = problems.all();
        return new Reading(
                all.isEmpty() ? Optional.of(new PriceBook(offers)) : Optional.empty(),
                divided && !offers.isEmpty() ? Optional.of(new PriceBook(offers)) : Optional.empty(),
                all);
    }

    private static List<Offer> offers(
            List<Rows.Row> rows, Vocabulary known, Optional<String> only, LocalDate today, Problems problems) {
        if (rows.isEmpty()) {
            problems.add("is empty; begin with the row " + String.join(",", Header.COLUMNS));
            return List.of();
        }
        if (rows.size() == 1) {
            problems.add("offers nothing; add a row for each part and supplier");
        }
        return Header.of(rows.get(0), problems)
                .map(header -> new OfferReader(header, known, today, problems))
                .map(reader -> rows.stream()
                        .skip(1)
                        .filter(row -> only.isEmpty() || reader.fits(row, only.get()))
                        .flatMap(row -> reader.read(row).stream())
                        .toList())
                .orElse(List.of());
    }

    private static Reading tooLarge(String name) {
        return refusal(name, "is larger than 16 MiB; keep only the parts you buy");
    }

    private static Reading refusal(String name, String what) {
        Problems problems = new Problems(name);
        problems.add(what);
        return new Reading(Optional.empty(), Optional.empty(), problems.all());
    }
}
