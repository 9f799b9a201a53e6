package hingewise.terminal;

import hingewise.casefile.CaseFile;
import hingewise.casefile.store.CaseFileException;
import hingewise.casefile.store.CaseFileStore;
import hingewise.costing.PriceBook;
import hingewise.costing.Shop;
import hingewise.costing.csv.PriceBookReader;
import hingewise.costing.yaml.ShopReader;
import hingewise.plain.Guessed;
import hingewise.plain.Quoted;
import hingewise.rulebook.RuleBook;
import hingewise.rulebook.yaml.Problem;
import hingewise.rulebook.yaml.Reading;
import hingewise.rulebook.yaml.RuleFiles;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;

/** Reads what a command works on, or refuses with everything that is wrong with it. */
final class Inputs {
    /** What stands above the problems of a rule book. */
    static final String UNUSABLE_RULES = "the rule book cannot be used:";

    private static final int LARGEST_TEXT = 1024 * 1024;

    private Inputs() {}

    static RuleBook rules(RuleFiles files) {
        Reading reading = files.read();
        return reading.ruleBook().orElseThrow(() -> new Refusal(ExitCode.RULE_PROBLEMS, problems(reading)));
    }

    private static List<String> problems(Reading reading) {
        return Stream.concat(
                        Stream.of(UNUSABLE_RULES), reading.problems().stream().map(Problem::text))
                .toList();
    }

    /** The shop's own price book, or the invented one that comes with the program. */
    static PriceBook prices(Optional<Path> file, RuleBook rules, LocalDate today) {
        var reading = priceBook(file, rules, today);
        return reading.priceBook()
                .orElseThrow(() -> new Refusal(
                        ExitCode.BAD_INPUT,
                        reading.rest().isEmpty()
                                ? reading.problems()
                                : Stream.concat(
                                                reading.problems().stream(),
                                                Stream.of("to go on without these rows, add --skip-bad-rows"))
                                        .toList()));
    }

    /** The same, without the rows that have a problem; the problems are told all the same. */
    static PriceBook goodPrices(Optional<Path> file, RuleBook rules, LocalDate today, Consumer<String> problems) {
        var reading = priceBook(file, rules, today);
        PriceBook rest = reading.rest().orElseThrow(() -> new Refusal(ExitCode.BAD_INPUT, reading.problems()));
        reading.problems().forEach(p -> problems.accept("left out: " + p));
        return rest;
    }

    private static hingewise.costing.csv.Reading priceBook(Optional<Path> file, RuleBook rules, LocalDate today) {
        return file.map(f -> PriceBookReader.read(f, rules, today)).orElseGet(() -> PriceBookReader.readShipped(rules));
    }

    /** The shop's own figures, or the invented ones that come with the program. */
    static Shop shop(Optional<Path> file, RuleBook rules) {
        var reading = file.map(f -> ShopReader.read(f, rules)).orElseGet(() -> ShopReader.readShipped(rules));
        return reading.shop().orElseThrow(() -> new Refusal(ExitCode.BAD_INPUT, reading.problems()));
    }

    /** A text from a file, or from the standard input when it is called "-". */
    static Guessed text(String file) {
        String name = file.equals("-") ? "the standard input" : Quoted.line(file);
        try (InputStream in = file.equals("-") ? System.in : Files.newInputStream(Path.of(file))) {
            byte[] bytes = in.readNBytes(LARGEST_TEXT + 1);
            if (bytes.length > LARGEST_TEXT) {
                throw Refusal.badInput(name + " is larger than 1 MiB, which is no listing; give it the text alone");
            }
            return Guessed.decode(bytes);
        } catch (IOException | InvalidPathException e) {
            throw Refusal.badInput(name + " cannot be read; see that it is there and may be read by you");
        }
    }

    static CaseFile caseFile(Path file) {
        try {
            return CaseFileStore.read(file);
        } catch (CaseFileException e) {
            throw new Refusal(
                    ExitCode.BAD_INPUT, String.valueOf(e.getMessage()).lines().toList());
        }
    }
}
