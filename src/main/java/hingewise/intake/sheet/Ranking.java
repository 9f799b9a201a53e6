package hingewise.intake.sheet;

import hingewise.intake.sheet.Outcome.Appraised;
import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.PriorityQueue;
import java.util.function.BooleanSupplier;

/**
 * Puts rows in order without holding them: sorted runs on disk, merged, or, when only the best are asked for, a heap of
 * those. (Knuth, The Art of Computer Programming 3, section 5.4, from memory.)
 */
final class Ranking {
    private static final String RUN = "run";
    /** What a row in memory takes beside its own bytes, roughly. */
    private static final int WRAPPING = 80;

    private final Spool rows;
    private final OutcomeCodec codec;
    private final Shrinkage shrinkage;
    private final Path folder;
    private final Limits limits;
    private final BooleanSupplier stop;
    private int runs;

    /**
     * How much is held at once.
     *
     * @param bytes in the rows of one run
     * @param merged runs merged at once, at least 2
     */
    record Limits(long bytes, int merged) {
        static final Limits USUAL = new Limits(12_000_000, 64);
    }

    /** @param folder for runs, empty; they are removed as they are used up */
    Ranking(Spool rows, OutcomeCodec codec, Shrinkage shrinkage, Path folder, Limits limits, BooleanSupplier stop) {
        this.rows = rows;
        this.codec = codec;
        this.shrinkage = shrinkage;
        this.folder = folder;
        this.limits = limits;
        this.stop = stop;
    }

    /**
     * Hands over the rows, best first.
     *
     * @param top how many; all if empty
     * @throws StoppedException when told to stop
     */
    void hand(OptionalInt top, RankedRows to) throws IOException {
        long[] rank = {0};
        Sink out = entry -> to.add(++rank[0], row(entry.bytes()).orElseThrow());
        if (top.isPresent()) {
            for (Entry entry : best(top.getAsInt())) {
                out.add(entry);
            }
            return;
        }
        Deque<Spool> sorted = new ArrayDeque<>(runs());
        while (sorted.size() > limits.merged()) {
            List<Spool> some = new ArrayList<>();
            for (int i = 0; i < limits.merged(); i++) {
                some.add(sorted.remove());
            }
            Spool merged = newRun();
            try (Spool.Writer run = merged.create(RUN)) {
                merge(some, entry -> run.add(entry.bytes()));
            }
            sorted.add(merged);
        }
        merge(List.copyOf(sorted), out);
    }

    /** A row as bytes, and what decides its rank. Amounts are in minor units. */
    private record Entry(long corrected, long profit, long line, byte[] bytes) {
        static final Comparator<Entry> BEST_FIRST = Comparator.comparingLong(Entry::corrected)
                .thenComparingLong(Entry::profit)
                .reversed()
                .thenComparingLong(Entry::line);
    }

    private List<Entry> best(int top) throws IOException {
        PriorityQueue<Entry> worstFirst = new PriorityQueue<>(Entry.BEST_FIRST.reversed());
        try (Spool.Reader in = rows.read()) {
            for (Optional<Entry> entry = next(in); entry.isPresent(); entry = next(in)) {
                worstFirst.add(entry.get());
                if (worstFirst.size() > top) {
                    worstFirst.remove();
                }
            }
        }
        return worstFirst.stream().sorted(Entry.BEST_FIRST).toList();
    }

    private List<Spool> runs() throws IOException {
        List<Spool> sorted = new ArrayList<>();
        List<Entry> held = new ArrayList<>();
        long bytes = 0;
        try (Spool.Reader in = rows.read()) {
            for (Optional<Entry> entry = next(in); entry.isPresent(); entry = next(in)) {
                held.add(entry.get());
                bytes += entry.get().bytes().length + WRAPPING;
                if (bytes > limits.bytes()) {
                    sorted.add(run(held));
                    held.clear();
                    bytes = 0;
                }
            }
        }
        if (!held.isEmpty()) {
            sorted.add(run(held));
        }
        return sorted;
    }

    private Spool run(List<Entry> held) throws IOException {
        held.sort(Entry.BEST_FIRST);
        Spool run = newRun();
        try (Spool.Writer out = run.create(RUN)) {
            for (Entry entry : held) {
                out.add(entry.bytes());
            }
        }
        return run;
    }

    private Spool newRun() {
        return new Spool(folder.resolve("run-" + runs++), codec);
    }

    private Optional<Entry> next(Spool.Reader in) throws IOException {
        while (true) {
            if (stop.getAsBoolean()) {
                throw new StoppedException();
            }
            Optional<byte[]> bytes = in.nextBytes();
            if (bytes.isEmpty()) {
                return Optional.empty();
            }
            Optional<RankedRow> row = row(bytes.get());
            if (row.isPresent()) {
                return Optional.of(entry(row.get(), bytes.get()));
            }
        }
    }

    private static Entry entry(RankedRow row, byte[] bytes) {
        return new Entry(
                row.corrected().getAmountMinorLong(),
                row.row().appraisal().profit().getAmountMinorLong(),
                row.row().line(),
                bytes);
    }

    /** The row in these bytes; nothing if it was skipped. */
    private Optional<RankedRow> row(byte[] bytes) throws IOException {
        return codec.outcome(bytes) instanceof Appraised row
                ? Optional.of(RankedRow.of(row, shrinkage))
                : Optional.empty();
    }

    private interface Sink {
        void add(Entry entry) throws IOException;
    }

    /** A run and its first row that was not handed over yet. */
    private record Head(Entry entry, Spool.Reader from) {}

    private void merge(List<Spool> sorted, Sink to) throws IOException {
        PriorityQueue<Head> heads = new PriorityQueue<>(Comparator.comparing(Head::entry, Entry.BEST_FIRST));
        List<Closeable> open = new ArrayList<>();
        try {
            for (Spool run : sorted) {
                Spool.Reader reader = run.read();
                open.add(reader);
                next(reader).ifPresent(entry -> heads.add(new Head(entry, reader)));
            }
            for (Head best = heads.poll(); best != null; best = heads.poll()) {
                to.add(best.entry());
                Spool.Reader from = best.from();
                next(from).ifPresent(entry -> heads.add(new Head(entry, from)));
            }
        } finally {
            for (Closeable reader : open) {
                reader.close();
            }
        }
        for (Spool run : sorted) {
            Files.delete(run.file());
        }
    }
}
