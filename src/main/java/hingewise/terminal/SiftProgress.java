package hingewise.terminal;

import hingewise.intake.csv.Encoding;
import hingewise.intake.csv.Survey;
import hingewise.intake.sheet.Columns;
import hingewise.intake.sheet.Shrinkage;
import hingewise.intake.sheet.Tally;
import hingewise.intake.sheet.Watcher;
import hingewise.plain.Quoted;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.Locale;
import java.util.stream.Collectors;
import org.joda.money.Money;

/** Tells on the error stream how far a sheet has got, what was passed over, and what the result rests on. */
final class SiftProgress implements Watcher {
    static final String UNSEEN = "what a text plainly claims was taken as the seller's claim, and nobody looked at it";
    static final String METHOD = "the best-looking of many is the most over-estimated, so expected profits are drawn"
            + " towards the mean of the sheet, the more the less each can be trusted (empirical Bayes, Efron and Morris"
            + " 1975); ceilings fall with them, chances of loss are as estimated";

    private static final Duration PAUSE = Duration.ofSeconds(5);

    private final Console console;
    private final String sheet;
    private final Path work;
    private Instant began;
    private Instant told;
    private long bytes = 1;
    private long bytesBefore = -1;
    private long rows;
    private long before;

    SiftProgress(Console console, Path sheet, Path work) {
        this.console = console;
        this.sheet = Quoted.line(sheet.toString());
        this.work = work;
        this.began = console.clock().instant();
        this.told = began;
    }

    @Override
    public void begins(Survey survey, Columns columns, long before) {
        this.before = before;
        bytes = survey.bytes();
        began = console.clock().instant();
        told = began;
        if (survey.encoding() == Encoding.WINDOWS_1252) {
            console.complain(sheet + ": line " + survey.notUtf8() + ": a byte here is not UTF-8; the sheet is read as"
                    + " Windows-1252, which is a guess. If characters come out wrong, save it as UTF-8");
        }
        if (!columns.unread().isEmpty()) {
            console.complain(sheet + ": not read but carried along: "
                    + columns.unread().stream().map(Quoted::of).collect(Collectors.joining(", ")));
        }
        if (before > 0) {
            console.complain("goes on behind " + Figures.count(before, "row") + " that are done");
        }
    }

    @Override
    public void skipped(long line, String problem) {
        console.complain(sheet + ": line " + line + ": " + problem + "; this row was skipped");
    }

    @Override
    public void progress(long bytesDone, long rowsDone) {
        rows = rowsDone;
        if (bytesBefore < 0) {
            // The first step stands for what was there before it: a small error, in exchange for nothing to pass in.
            bytesBefore = before > 0 ? bytesDone : 0;
        }
        Instant now = console.clock().instant();
        if (Duration.between(told, now).compareTo(PAUSE) >= 0) {
            told = now;
            console.complain(line(bytesDone, Duration.between(began, now)));
        }
    }

    private String line(long bytesDone, Duration spent) {
        double seconds = spent.toMillis() / 1000.0;
        long done = bytesDone - bytesBefore;
        String left = done <= 0 ? "" : ", about " + time((bytes - bytesDone) * seconds / done) + " left";
        return String.format(
                        Locale.ROOT,
                        "%,d rows done, %.1f %% of the sheet, %s rows a second",
                        before + rows,
                        100.0 * bytesDone / bytes,
                        rate(rows / seconds))
                + left;
    }

    private static String rate(double rate) {
        return String.format(Locale.ROOT, rate < 10 ? "%.1f" : "%,.0f", rate);
    }

    private static String time(double seconds) {
        if (seconds < 90) {
            return Math.round(seconds) + " s";
        }
        return seconds < 5400
                ? Math.round(seconds / 60) + " min"
                : String.format(Locale.ROOT, "%.1f h", seconds / 3600);
    }

    @Override
    public void ranks(Tally tally) {
        if (tally.appraised() == 0) {
            console.complain(sheet + ": no listing in it could be used");
        }
    }

    /** Somebody asked to stop. */
    void stopped() {
        console.complain("stopped; the " + Figures.count(before + rows, "row") + " done are kept in "
                + Quoted.of(work.toString()) + ", go on with --resume");
    }

    /** What the result rests on. */
    void done(Tally tally) {
        console.complain(Figures.count(tally.appraised(), "listing") + " ranked, "
                + Figures.count(tally.skipped(), "row") + " skipped, "
                + Figures.count(tally.thought(), "different set") + " of claims looked into");
        if (tally.appraised() == 0) {
            return;
        }
        console.complain(UNSEEN);
        Shrinkage shrinkage = tally.shrinkage();
        if (!shrinkage.corrects()) {
            console.complain("with fewer than " + Shrinkage.FEWEST + " listings no expected profit is corrected for"
                    + " having been picked from many");
            return;
        }
        console.complain(METHOD);
        console.complain("the mean is "
                + Figures.money(Money.of(shrinkage.currency(), shrinkage.mean(), RoundingMode.HALF_EVEN))
                + "; listings truly differ by about "
                + Figures.money(Money.of(
                        shrinkage.currency(), Math.sqrt(shrinkage.between().doubleValue()), RoundingMode.HALF_EVEN))
                + " (standard deviation)");
    }
}
