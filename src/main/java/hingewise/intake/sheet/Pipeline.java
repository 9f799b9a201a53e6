package hingewise.intake.sheet;

import hingewise.intake.csv.Row;
import hingewise.intake.csv.RowReader;
import hingewise.intake.sheet.Outcome.Appraised;
import hingewise.intake.sheet.Outcome.Place;
import hingewise.intake.sheet.Outcome.Skipped;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;

/**
 * Rows to outcomes, on several threads and yet in the order of the sheet. Rows are read only a few handfuls ahead of
 * what is done, so that what is held does not depend on the sheet's length.
 */
final class Pipeline {
    private static final int ROWS = 32;
    private static final long CHARACTERS = 1 << 18;
    /** Handfuls in hand for each worker: one in work, and enough waiting to bridge one that takes long. */
    private static final int AHEAD = 3;

    private final int workers;
    private final ListingChecker checker;
    private final ThreadLocal<ClaimReader> reader;
    private final Appraiser appraiser;
    private final BooleanSupplier stop;

    Pipeline(
            int workers,
            ListingChecker checker,
            Supplier<ClaimReader> readers,
            Appraiser appraiser,
            BooleanSupplier stop) {
        this.workers = workers;
        this.checker = checker;
        this.reader = ThreadLocal.withInitial(readers);
        this.appraiser = appraiser;
        this.stop = stop;
    }

    /** Takes outcomes in the order of the sheet. */
    interface Sink {
        void add(List<Outcome> outcomes) throws IOException;
    }

    /** A handful of rows in work. */
    private record Batch(int rows, Future<List<Outcome>> outcomes) {}

    /**
     * Works through the rest of the sheet.
     *
     * @return whether it came to the end, and was not told to stop before
     */
    boolean run(RowReader in, Sink to) throws IOException {
        ExecutorService pool = Executors.newFixedThreadPool(workers);
        try {
            Deque<Batch> ahead = new ArrayDeque<>();
            boolean more = true;
            while (true) {
                while (more && ahead.size() < AHEAD * workers && !stop.getAsBoolean()) {
                    List<Row> rows = some(in);
                    more = !rows.isEmpty();
                    if (more) {
                        ahead.add(new Batch(rows.size(), pool.submit(() -> outcomes(rows))));
                    }
                }
                Batch first = ahead.poll();
                if (first == null) {
                    return !more;
                }
                List<Outcome> done = await(first.outcomes());
                to.add(done);
                if (done.size() < first.rows()) {
                    return false;
                }
            }
        } finally {
            pool.shutdownNow();
        }
    }

    private static List<Row> some(RowReader in) throws IOException {
        List<Row> rows = new ArrayList<>();
        long characters = 0;
        while (rows.size() < ROWS && characters < CHARACTERS) {
            Optional<Row> row = in.next();
            if (row.isEmpty()) {
                break;
            }
            // What spreadsheet programs leave below the last row.
            if (!row.get().usable() || row.get().cells().stream().anyMatch(c -> !c.isBlank())) {
                rows.add(row.get());
                characters +=
                        row.get().cells().stream().mapToLong(String::length).sum();
            }
        }
        return rows;
    }

    /** As many as were done before somebody asked to stop. */
    private List<Outcome> outcomes(List<Row> rows) {
        List<Outcome> done = new ArrayList<>();
        for (Row row : rows) {
            if (stop.getAsBoolean()) {
                break;
            }
            done.add(outcome(row));
        }
        return done;
    }

    private Outcome outcome(Row row) {
        Place next = new Place(row.end(), row.endLine());
        try {
            Listing listing = checker.check(row);
            List<Claim> claims = reader.get().read(listing.phone(), listing.text());
            Appraisal appraisal = appraiser
                    .prospect(new Claims(listing.phone(), claims, listing.quote()))
                    .at(listing.price(), listing.shipping());
            return new Appraised(row.line(), next, row.cells(), listing.price(), appraisal);
        } catch (UnappraisableException e) {
            return new Skipped(row.line(), next, e.problem());
        }
    }

    private static List<Outcome> await(Future<List<Outcome>> outcomes) {
        try {
            return outcomes.get();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new StoppedException();
        } catch (ExecutionException e) {
            if (e.getCause() instanceof RuntimeException cause) {
                throw cause;
            }
            throw new IllegalStateException(e.getCause());
        }
    }
}
