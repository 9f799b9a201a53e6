package hingewise.terminal;

import hingewise.costing.Shop;
import hingewise.intake.ListingReader;
import hingewise.intake.csv.SheetException;
import hingewise.intake.sheet.AssessedAppraiser;
import hingewise.intake.sheet.Destination;
import hingewise.intake.sheet.ListingClaims;
import hingewise.intake.sheet.Sifter;
import hingewise.intake.sheet.StoppedException;
import hingewise.intake.sheet.Tally;
import hingewise.rulebook.RuleBook;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "sift",
        description = {
            "Rank a sheet of listings by what buying each is expected to bring.",
            "",
            "The sheet is comma-separated; its first row names the columns id, text, price, shipping, family or model,"
                    + " and if you like quote (of the maker's service). Amounts are in the shop's currency. Other"
                    + " columns are carried along. What a text plainly claims is taken as the seller's claim, and"
                    + " nobody looks at it: read a listing yourself before you buy.",
            "",
            "The work of a run that is interrupted is kept; --resume goes on with it.",
            ""
        })
final class SiftCommand implements Callable<Integer> {
    private static final int MOST_AT_TOP = 100_000;

    private final Console console;

    @Parameters(paramLabel = "LISTINGS", description = "The sheet.")
    private Path sheet = Path.of("");

    @Option(names = "--out", paramLabel = "FILE", description = "Write the result to this file, whole or not at all.")
    private Optional<Path> out = Optional.empty();

    @Option(names = "--top", paramLabel = "N", description = "Give the best N only.")
    private Optional<Integer> top = Optional.empty();

    @Option(names = "--resume", description = "Go on with the work of a run that was interrupted.")
    private boolean resume;

    @Option(names = "--json", description = "Give JSON lines: one object about the whole, then one for each listing.")
    private boolean json;

    @Mixin
    private FiguresOption figures = new FiguresOption();

    @Mixin
    private RulesOption rulesOption = new RulesOption();

    SiftCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        if (top.isPresent() && (top.get() < 1 || top.get() > MOST_AT_TOP)) {
            throw Refusal.badInput("--top " + top.get() + " is not a number from 1 to " + MOST_AT_TOP + "; correct it");
        }
        RuleBook rules = rulesOption.read();
        Shop shop = figures.shop(rules);
        ListingReader reader = rulesOption.reader(rules, console);
        Sifter sifter = new Sifter(
                rules.families().keySet(),
                shop,
                () -> new ListingClaims(rules, reader.another()),
                new AssessedAppraiser(rules, figures.prices(rules, console), shop));
        Path work = beside(out.orElse(sheet), ".sifting");
        Sifter.Order order = new Sifter.Order(
                sheet,
                work,
                Settings.digest(rulesOption, figures),
                resume,
                top.map(OptionalInt::of).orElse(OptionalInt.empty()),
                SiftCsv.TAKEN,
                Runtime.getRuntime().availableProcessors());
        SiftProgress progress = new SiftProgress(console, sheet, work);
        try (Interruption interruption = Interruption.watch()) {
            try {
                return done(sift(sifter, order, progress, interruption), progress)
                        .number();
            } catch (StoppedException e) {
                progress.stopped();
                return ExitCode.STOPPED.number();
            }
        } catch (SheetException e) {
            throw new Refusal(ExitCode.BAD_INPUT, e.problems());
        } catch (IOException e) {
            throw Refusal.badInput("reading or writing failed (" + e + "); what was done is kept in \"" + work
                    + "\", go on with --resume when there is room");
        }
    }

    private Tally sift(Sifter sifter, Sifter.Order order, SiftProgress progress, Interruption interruption)
            throws IOException {
        if (out.isEmpty()) {
            return SiftOutput.to(console.out(), o -> sifter.sift(order, progress, destination(o), interruption));
        }
        Path target = out.get();
        if (Files.isDirectory(target)) {
            throw SheetException.of(target, "is a folder; name a file in it");
        }
        if (Files.exists(target) && Files.exists(sheet) && Files.isSameFile(target, sheet)) {
            throw SheetException.of(target, "is the sheet itself, and was left as it is; choose another name");
        }
        return SiftOutput.replace(target, o -> sifter.sift(order, progress, destination(o), interruption));
    }

    private Destination destination(java.io.Writer to) {
        boolean invented = figures.inventedPrices();
        return (columns, tally) -> json ? SiftJson.begin(to, columns, tally, invented) : SiftCsv.begin(to, columns);
    }

    private static ExitCode done(Tally tally, SiftProgress progress) {
        progress.done(tally);
        return tally.skipped() > 0 ? ExitCode.ROWS_SKIPPED : ExitCode.OK;
    }

    private static Path beside(Path file, String ending) {
        return file.resolveSibling(file.getFileName() + ending);
    }
}
