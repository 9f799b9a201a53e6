package hingewise.bench;

import hingewise.bench.Workload.Kind;
import java.io.PrintStream;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
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
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.VerboseMode;

/**
 * Our engine beside two general-purpose libraries on the same networks in one run: milliseconds for the posteriors of all
 * causes and how many times longer the faster library takes. Ours starts from the whole network; the libraries start from
 * a pruned network that is already built.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 4, time = 1000, timeUnit = TimeUnit.MILLISECONDS)
@Measurement(iterations = 3, time = 1000, timeUnit = TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgs = "-Xmx3g")
public class Benchmarks {
    private static final int[][] SIZES = {{40, 10}, {80, 10}, {160, 10}, {80, 20}, {160, 30}};
    private static final Duration LONGEST_TRY = Duration.ofSeconds(8);

    @Param("TWO_LAYERS_CERTAIN")
    public String kind = "";

    @Param("40")
    public int causes;

    @Param("10")
    public int positives;

    @Param("OURS")
    public String contender = "";

    private Supplier<Object> work = Object::new;

    /** Builds the network once. */
    @Setup
    public void prepare() {
        work = Contender.valueOf(contender).prepare(Workload.of(Kind.valueOf(kind), causes, positives, 1));
    }

    /** One contender solves the workload once. */
    @Benchmark
    public Object solve() {
        return work.get();
    }

    /** Runs everything, or the kinds of network named, and prints one row per workload as it is measured. */
    public static void main(String[] arguments) throws Exception {
        PrintStream out = System.out;
        out.println("network                            causes  positive  ours ms    libraries ms (- did not finish in "
                + LONGEST_TRY.toSeconds() + " s)  times");
        Set<String> asked = Set.of(arguments);
        for (Kind kind : Kind.values()) {
            if (!asked.isEmpty() && !asked.contains(kind.name())) {
                continue;
            }
            for (int[] size : SIZES) {
                out.println(row(kind.name(), size[0], size[1]));
            }
        }
    }

    private static String row(String kind, int causes, int positives) throws Exception {
        double ours = measure(kind, causes, positives, Contender.OURS);
        double best = Double.POSITIVE_INFINITY;
        List<String> others = new ArrayList<>();
        for (Contender contender : Contender.values()) {
            if (contender != Contender.OURS) {
                boolean measurable = Probe.finishes(kind, causes, positives, contender, LONGEST_TRY);
                double time =
                        measurable ? measure(kind, causes, positives, contender) : Double.POSITIVE_INFINITY;
                best = Math.min(best, time);
                String shown = measurable ? String.format(Locale.ROOT, "%.1f", time) : "-";
                others.add(contender.name().toLowerCase(Locale.ROOT) + " " + shown);
            }
        }
        String ratio = best == Double.POSITIVE_INFINITY ? "no library finished" : String.format(Locale.ROOT, "%.0f", best / ours);
        return String.format(
                Locale.ROOT, "%-34s %6d %9d %8.2f    %s  %s", kind, causes, positives, ours, String.join(", ", others), ratio);
    }

    private static double measure(String kind, int causes, int positives, Contender contender) throws RunnerException {
        return new Runner(new OptionsBuilder()
                        .include(Benchmarks.class.getName())
                        .param("kind", kind)
                        .param("causes", Integer.toString(causes))
                        .param("positives", Integer.toString(positives))
                        .param("contender", contender.name())
                        .verbosity(VerboseMode.SILENT)
                        .build())
                .runSingle()
                .getPrimaryResult()
                .getScore();
    }
}
