package hingewise.bench;

import hingewise.casefile.Phone;
import hingewise.intake.store.Readers;
import hingewise.intake.csv.Encoding;
import hingewise.intake.csv.Row;
import hingewise.intake.csv.RowReader;
import hingewise.intake.sheet.ListingClaims;
import hingewise.rulebook.RuleBook;
import hingewise.rulebook.yaml.RuleBookReader;
import hingewise.rulebook.yaml.RuleFiles;
import hingewise.terminal.Console;
import hingewise.terminal.Terminal;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Sheets of 1,000 to 1,000,000 invented listings, sifted by the command in a fresh process each, all in one run: seconds,
 * peak memory, and what a row more costs from one size to the next. Every sheet claims the same few things, so the
 * thinking about them is a fixed cost. At last where the time of a row goes.
 */
public final class SiftBenchmark {
    private static final long[] SIZES = {1_000, 10_000, 100_000, 1_000_000};
    private static final long SEED = 1;
    private static final int SAMPLE = 20_000;

    private SiftBenchmark() {}

    private record Taken(long rows, double seconds, long peakKilobytes) {}

    /** Runs everything, or as far as the size named, and prints a line for each size. */
    public static void main(String[] arguments) throws Exception {
        if (arguments.length == 2) {
            System.exit(sift(arguments[0], arguments[1]));
        }
        long largest = arguments.length == 1 ? Long.parseLong(arguments[0]) : Long.MAX_VALUE;
        PrintStream out = System.out;
        Path folder = Files.createTempDirectory("hingewise-bench");
        out.println("rows        seconds   rows a second   ms for a row more   peak memory, MB");
        List<Taken> taken = new ArrayList<>();
        for (long rows : SIZES) {
            if (rows <= largest) {
                taken.add(take(folder, rows));
                out.println(line(taken));
            }
        }
        Taken first = taken.get(0);
        Taken last = taken.get(taken.size() - 1);
        out.printf(
                Locale.ROOT,
                "%d times the rows: memory %.2f times%n",
                last.rows() / first.rows(),
                last.peakKilobytes() / (double) first.peakKilobytes());
        if (taken.size() > 2) {
            out.printf(
                    Locale.ROOT,
                    "a row more costs %.2f times as much at the largest size as at the one before%n",
                    more(taken, taken.size() - 1) / more(taken, taken.size() - 2));
        }
        shares(folder, out);
    }

    private static String line(List<Taken> taken) {
        int i = taken.size() - 1;
        Taken t = taken.get(i);
        String more = i == 0 ? "" : String.format(Locale.ROOT, "%.3f", more(taken, i));
        return String.format(
                Locale.ROOT,
                "%-9d %9.1f %15.0f %19s %17d",
                t.rows(),
                t.seconds(),
                t.rows() / t.seconds(),
                more,
                t.peakKilobytes() / 1024);
    }

    private static double more(List<Taken> taken, int i) {
        Taken t = taken.get(i);
        Taken before = taken.get(i - 1);
        return 1000 * (t.seconds() - before.seconds()) / (t.rows() - before.rows());
    }

    private static Taken take(Path folder, long rows) throws IOException, InterruptedException {
        Path sheet = folder.resolve("sheet-" + rows + ".csv");
        Path result = folder.resolve("result-" + rows + ".csv");
        InventedSheet.write(sheet, rows, SEED);
        Path java = Path.of(System.getProperty("java.home"), "bin", "java");
        long start = System.nanoTime();
        Process process = new ProcessBuilder(
                        java.toString(),
                        "-XX:+UseSerialGC",
                        "-Xmx400m",
                        "-cp",
                        System.getProperty("java.class.path"),
                        SiftBenchmark.class.getName(),
                        sheet.toString(),
                        result.toString())
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        String peak = new String(process.getInputStream().readAllBytes()).strip();
        if (process.waitFor() != 0) {
            throw new IllegalStateException("sifting " + rows + " rows ended with " + process.exitValue());
        }
        double seconds = (System.nanoTime() - start) / 1e9;
        long lines;
        try (var read = Files.lines(result)) {
            lines = read.count();
        }
        if (lines != rows + 1) {
            throw new IllegalStateException("the result has " + lines + " lines for " + rows + " rows");
        }
        Files.delete(sheet);
        Files.delete(result);
        return new Taken(rows, seconds, Long.parseLong(peak));
    }

    private static int sift(String sheet, String result) throws IOException {
        int exit = Terminal.run(
                Console.ofSystem(Map.of()), (assessor, reader, demos) -> Optional.empty(), "sift", sheet, "--out", result);
        // What Linux says of the most memory this process ever held, in kilobytes.
        try (var lines = Files.lines(Path.of("/proc/self/status"))) {
            System.out.println(lines.filter(l -> l.startsWith("VmHWM:"))
                    .map(l -> l.replaceAll("\\D", ""))
                    .findFirst()
                    .orElse("0"));
        }
        return exit;
    }

    private static void shares(Path folder, PrintStream out) throws IOException {
        Path sheet = folder.resolve("sample.csv");
        InventedSheet.write(sheet, SAMPLE, SEED);
        RuleBook rules = RuleBookReader.readShipped().ruleBook().orElseThrow();
        ListingClaims claims = new ListingClaims(rules, Readers.of(RuleFiles.SHIPPED, rules, () -> {}));
        for (int round = 0; round < 3; round++) {
            long start = System.nanoTime();
            List<Row> rows = new ArrayList<>();
            try (RowReader reader = new RowReader(sheet, Encoding.UTF_8, 0, 1)) {
                for (Optional<Row> row = reader.next(); row.isPresent(); row = reader.next()) {
                    rows.add(row.get());
                }
            }
            long divided = System.nanoTime();
            for (Row row : rows) {
                claims.read(new Phone(row.cells().get(4), ""), row.cells().get(1));
            }
            long read = System.nanoTime();
            if (round == 2) {
                out.printf(
                        Locale.ROOT,
                        "on one core: dividing the sheet into cells %.4f ms a row, reading the text %.4f ms%n",
                        (divided - start) / 1e6 / SAMPLE,
                        (read - divided) / 1e6 / SAMPLE);
            }
        }
        Files.delete(sheet);
        Files.delete(folder);
    }
}
