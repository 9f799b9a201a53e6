package hingewise.intake.sheet;

import hingewise.intake.csv.SheetException;
import hingewise.intake.sheet.Outcome.Appraised;
import hingewise.intake.sheet.Outcome.Place;
import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.joda.money.CurrencyUnit;

/** The outcomes of a sheet so far, what is summed over them, and the place in the sheet where work goes on. */
final class WorkFile implements Closeable {
    private final Spool spool;
    private final Spool.Writer out;
    private final Moments moments;
    private long appraised;
    private long skipped;
    private Place next;

    private WorkFile(Spool spool, CurrencyUnit currency, Place first, String of, boolean resume) throws IOException {
        this.spool = spool;
        this.moments = new Moments(currency);
        this.next = first;
        this.out = resume ? spool.append(readAgain()) : spool.create(of);
    }

    /**
     * Begins a work file.
     *
     * @param sheet digest of the sheet
     * @param first where its first row of data begins
     * @throws SheetException if an earlier run left one
     */
    static WorkFile begin(Spool spool, CurrencyUnit currency, String sheet, String settings, Place first)
            throws IOException {
        Path file = spool.file();
        Path folder = file.toAbsolutePath().getParent();
        if (Files.exists(file)) {
            throw SheetException.of(
                    file,
                    "an earlier run left its work here; go on with it by --resume, or remove the file to begin anew");
        }
        if (folder == null || !Files.isWritable(folder)) {
            throw SheetException.of(
                    file, "the work is kept here, but its folder may not be written to; name another with --out FILE");
        }
        return new WorkFile(spool, currency, first, sheet + " " + settings, false);
    }

    /**
     * Goes on with a work file.
     *
     * @throws SheetException if there is none, or it belongs to another sheet or other settings
     */
    static WorkFile resume(Spool spool, CurrencyUnit currency, String sheet, String settings, Place first)
            throws IOException {
        Path file = spool.file();
        if (!Files.exists(file)) {
            throw SheetException.of(file, "there is no work of an earlier run here to go on with; leave out --resume");
        }
        Optional<String> of;
        try (Spool.Reader reader = spool.read()) {
            of = reader.of();
        }
        String remedy = "; remove this file to begin anew";
        if (of.isEmpty()) {
            throw SheetException.of(file, "is not the work of an earlier run" + remedy);
        }
        if (!of.get().startsWith(sheet + " ")) {
            throw SheetException.of(file, "belongs to another sheet, or this one was changed since" + remedy);
        }
        if (!of.get().equals(sheet + " " + settings)) {
            throw SheetException.of(
                    file, "was made with another rule book, price book or shop file, or these were changed" + remedy);
        }
        return new WorkFile(spool, currency, first, sheet + " " + settings, true);
    }

    /** Takes in what is there. @return where it ends */
    private long readAgain() throws IOException {
        try (Spool.Reader reader = spool.read()) {
            for (Optional<Outcome> o = reader.next(); o.isPresent(); o = reader.next()) {
                count(o.get());
            }
            return reader.end();
        }
    }

    void add(Outcome outcome) throws IOException {
        out.add(outcome);
        count(outcome);
    }

    private void count(Outcome outcome) {
        if (outcome instanceof Appraised row) {
            appraised++;
            moments.add(row.appraisal().profit(), row.appraisal().spread());
        } else {
            skipped++;
        }
        next = outcome.next();
    }

    /** Hands what was added to the system, so that the end of this program cannot lose it. */
    void flush() throws IOException {
        out.flush();
    }

    long appraised() {
        return appraised;
    }

    long skipped() {
        return skipped;
    }

    /** Where the row behind the last outcome begins. */
    Place next() {
        return next;
    }

    Shrinkage shrinkage() {
        return moments.shrinkage();
    }

    @Override
    public void close() throws IOException {
        out.close();
    }
}
