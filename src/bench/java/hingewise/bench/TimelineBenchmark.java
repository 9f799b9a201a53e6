package hingewise.bench;

import hingewise.assessment.Assessment;
import hingewise.assessment.Assessor;
import hingewise.casefile.CaseFile;
import hingewise.casefile.Entry;
import hingewise.casefile.Opened;
import hingewise.casefile.Phone;
import hingewise.casefile.Report;
import hingewise.casefile.Try;
import hingewise.costing.csv.PriceBookReader;
import hingewise.costing.yaml.ShopReader;
import hingewise.rulebook.EvidenceKind;
import hingewise.rulebook.RuleBook;
import hingewise.rulebook.yaml.RuleBookReader;
import java.io.PrintStream;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.VerboseMode;

/**
 * What a timeline costs: the whole answer to a case of fourteen findings, alone and followed by six tries with a look
 * after each, in one run with the rules that come with the program. The three take turns and the best iteration of
 * each is told: whatever else a machine does only adds to one.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2, timeUnit = TimeUnit.SECONDS)
@Measurement(iterations = 5, time = 1, timeUnit = TimeUnit.SECONDS)
@Fork(1)
public class TimelineBenchmark {
    private static final int ROUNDS = 4;
    private static final Instant AT = Instant.parse("2026-11-20T10:00:00Z");

    private static final List<String> FINDINGS = List.of(
            "vibrates-no-image=yes",
            "crease-blobs=yes",
            "dead-cover-screen=yes",
            "cover-cracked=no",
            "back-loose=yes",
            "back-bulges=no",
            "corner-dents=yes",
            "charges-only-wirelessly=yes",
            "plug-loose=no",
            "port-lint=no",
            "inner-crack-visible=no",
            "no-logo-inside=yes",
            "screws-missing=yes",
            "glue-lifted=yes");

    /** What is followed by what: nothing, tries of few causes each, tries that touch several. */
    public enum Sequel {
        NONE(List.of(), List.of()),
        NARROW(
                List.of("batteries-off", "port-back-off"),
                List.of(
                        "clean-port > charges-only-wirelessly=yes",
                        "dry-port-a-day > charges-only-wirelessly=yes",
                        "magnets-away > vibrates-no-image=yes",
                        "reseat-port-cable > charges-only-wirelessly=yes",
                        "reseat-cover-cable > dead-cover-screen=no",
                        "reseat-interconnect > charges-only-wirelessly=no")),
        WIDE(
                List.of("shields-off", "port-back-off"),
                List.of(
                        "clean-port > charges-only-wirelessly=yes",
                        "reopen-what-was-touched > vibrates-no-image=yes",
                        "reseat-inner-connector > vibrates-no-image=yes",
                        "clean-inner-connector > vibrates-no-image=yes",
                        "reseat-cover-cable > dead-cover-screen=yes",
                        "clean-cover-connector > dead-cover-screen=no"));

        private final List<String> openings;
        private final List<String> tries;

        Sequel(List<String> openings, List<String> tries) {
            this.openings = openings;
            this.tries = tries;
        }
    }

    @Param({"NONE", "NARROW", "WIDE"})
    public Sequel sequel = Sequel.NONE;

    private Optional<Assessor> assessor = Optional.empty();
    private CaseFile file = new CaseFile("", true, new Phone("clamshell", ""), List.of());

    /** Reads rules and prices, and tells the case. */
    @Setup
    public void prepare() {
        RuleBook rules = RuleBookReader.readShipped().ruleBook().orElseThrow();
        assessor = Optional.of(new Assessor(
                rules,
                PriceBookReader.readShipped(rules).priceBook().orElseThrow(),
                ShopReader.readShipped(rules).shop().orElseThrow()));
        List<Entry> entries = new ArrayList<>();
        FINDINGS.forEach(finding -> look(entries, finding));
        sequel.openings.forEach(state -> entries.add(new Opened("o" + entries.size(), AT, "bench", state, "")));
        for (String attempt : sequel.tries) {
            String[] parts = attempt.split(" > ");
            entries.add(new Try("t" + entries.size(), AT, "bench", parts[0], ""));
            look(entries, parts[1]);
        }
        file = new CaseFile("fourteen findings", true, new Phone("clamshell", "invented"), entries);
    }

    private static void look(List<Entry> entries, String finding) {
        String[] parts = finding.split("=");
        entries.add(new Report(
                "r" + entries.size(), AT, "bench", EvidenceKind.LOOK, parts[0], parts[1], Optional.empty(), ""));
    }

    /** The whole answer. */
    @Benchmark
    public Assessment assess() {
        return assessor.orElseThrow().assess(file);
    }

    /** Runs all three and prints what a timeline costs beside the findings alone. */
    public static void main(String[] arguments) throws Exception {
        PrintStream out = System.out;
        Map<String, Double> millis = new LinkedHashMap<>();
        for (int round = 0; round < ROUNDS; round++) {
            new Runner(new OptionsBuilder()
                            .include(TimelineBenchmark.class.getName())
                            .verbosity(VerboseMode.SILENT)
                            .shouldFailOnError(true)
                            .build())
                    .run()
                    .forEach(result -> millis.merge(
                            result.getParams().getParam("sequel"),
                            result.getPrimaryResult().getStatistics().getMin(),
                            Math::min));
        }
        double alone = millis.getOrDefault(Sequel.NONE.name(), Double.NaN);
        millis.forEach((sequel, ms) ->
                out.println(String.format(Locale.ROOT, "%-8s %8.1f ms %6.2f times", sequel, ms, ms / alone)));
    }
}
