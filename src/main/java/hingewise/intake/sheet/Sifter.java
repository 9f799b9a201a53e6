package hingewise.intake.sheet;

import hingewise.costing.Shop;
import hingewise.intake.csv.Row;
import hingewise.intake.csv.RowReader;
import hingewise.intake.csv.SheetException;
import hingewise.intake.csv.Survey;
import hingewise.intake.sheet.Outcome.Place;
import hingewise.intake.sheet.Outcome.Skipped;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;

/**
 * Ranks the listings of a sheet. First every row is appraised by itself, and the outcomes are kept in a work file, with
 * which a run that was stopped goes on. Then, because the correction needs the whole sheet, the outcomes are put in order
 * and handed over. What is held in memory does not grow with the rows.
 */
public final class Sifter {
    /** Prospects remembered, by what is claimed. Each takes up to half a megabyte, most take far less. */
    private static final int REMEMBERED = 1_024;

    private final Set<String> families;
    private final Shop shop;
    private final Supplier<ClaimReader> readers;
    private final Appraiser appraiser;
    private final Ranking.Limits limits;

    /**
     * @param families ids of the families a row may name
     * @param readers gives one for each thread
     */
    public Sifter(Set<String> families, Shop shop, Supplier<ClaimReader> readers, Appraiser appraiser) {
        this(families, shop, readers, appraiser, Ranking.Limits.USUAL);
    }

    Sifter(Set<String> families, Shop shop, Supplier<ClaimReader> readers, Appraiser appraiser, Ranking.Limits limits) {
        this.families = Set.copyOf(families);
        this.shop = shop;
        this.readers = readers;
        this.appraiser = appraiser;
        this.limits = limits;
    }

    /**
     * A sheet and how it is to be sifted.
     *
     * @param work where outcomes are kept until the result stands; runs are sorted beside it
     * @param settings stands for all else that outcomes depend on, such as the rule book; a run goes on only with the same
     * @param resume whether to go on with the work file of an earlier run
     * @param top how many rows to hand over, at least 1; all if empty
     * @param taken names of the columns that the result adds
     * @param workers threads that appraise, at least 1
     */
    public record Order(
            Path sheet, Path work, String settings, boolean resume, OptionalInt top, Set<String> taken, int workers) {
        public Order {
            taken = Set.copyOf(taken);
        }
    }

    /**
     * Sifts a sheet. The work file is removed once all rows are handed over, and kept if that does not come about.
     *
     * @param stop is asked often; once it is true, what is done is kept and the work ends
     * @throws SheetException if the sheet or the work file cannot be used
     * @throws StoppedException when told to stop
     */
    public Tally sift(Order order, Watcher watcher, Destination destination, BooleanSupplier stop) throws IOException {
        Survey survey = Survey.of(order.sheet());
        Row header = header(order.sheet(), survey);
        Columns columns = Columns.of(order.sheet(), header, order.taken());
        Place first = new Place(header.end(), header.endLine());
        OutcomeCodec codec = new OutcomeCodec(shop.currency());
        Spool spool = new Spool(order.work(), codec);
        Tally tally;
        try (WorkFile work = order.resume()
                ? WorkFile.resume(spool, shop.currency(), survey.digest(), order.settings(), first)
                : WorkFile.begin(spool, shop.currency(), survey.digest(), order.settings(), first)) {
            watcher.begins(survey, columns, work.appraised() + work.skipped());
            Prospects prospects = new Prospects(appraiser, REMEMBERED);
            Pipeline pipeline = new Pipeline(
                    order.workers(), new ListingChecker(columns, families, shop), readers, prospects, stop);
            appraise(order.sheet(), survey, pipeline, work, watcher);
            tally = new Tally(work.appraised(), work.skipped(), prospects.thought(), work.shrinkage());
        }
        watcher.ranks(tally);
        try (Scratch scratch = Scratch.beside(order.work())) {
            new Ranking(spool, codec, tally.shrinkage(), scratch.folder(), limits, stop)
                    .hand(order.top(), destination.begin(columns, tally));
        }
        Files.delete(order.work());
        return tally;
    }

    private static Row header(Path sheet, Survey survey) throws IOException {
        try (RowReader rows = new RowReader(sheet, survey.encoding(), survey.begins(), 1)) {
            return rows.next()
                    .orElseThrow(() -> SheetException.of(
                            sheet, "holds only empty lines; begin with a row that names the columns"));
        }
    }

    private static void appraise(Path sheet, Survey survey, Pipeline pipeline, WorkFile work, Watcher watcher)
            throws IOException {
        long before = work.appraised() + work.skipped();
        Place from = work.next();
        try (RowReader rows = new RowReader(sheet, survey.encoding(), from.at(), from.line())) {
            boolean finished = pipeline.run(rows, outcomes -> {
                for (Outcome outcome : outcomes) {
                    work.add(outcome);
                    if (outcome instanceof Skipped row) {
                        watcher.skipped(row.line(), row.problem());
                    }
                }
                work.flush();
                watcher.progress(work.next().at(), work.appraised() + work.skipped() - before);
            });
            if (!finished) {
                throw new StoppedException();
            }
        }
    }
}
