package hingewise.bench;

import hingewise.casefile.CaseFile;
import hingewise.casefile.store.CaseFileStore;
import hingewise.costing.PriceBook;
import hingewise.costing.RepairCosts;
import hingewise.costing.Shop;
import hingewise.costing.Terms;
import hingewise.costing.csv.PriceBookReader;
import hingewise.costing.yaml.ShopReader;
import hingewise.decision.Planner;
import hingewise.diagnosis.Diagnosis;
import hingewise.diagnosis.Diagnostician;
import hingewise.inference.CliqueLimitException;
import hingewise.planning.BenchPolicy;
import hingewise.planning.Planning;
import hingewise.rulebook.RuleBook;
import hingewise.rulebook.yaml.RuleBookReader;
import java.io.IOException;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Supplier;
import java.util.stream.Stream;

/**
 * What it costs to answer a case anew after an answer, ranking of the next steps included, beside one inference, for each
 * demo case and with rule books of 1, 3 and 10 times the size ({@link GrownBook}). One inference is: the network that
 * stands, solved for the posteriors of all causes. Nothing is kept from the answer before. The stages take turns; a figure
 * is the median of the thread's own time, so that other work on the machine counts little. The allowance is
 * 1 + 3 × decisions inferences, where the decisions are the repairs and other ends that are weighed.
 */
public final class PlanningBenchmark {
    private static final Path CASES = Path.of("demo-cases");
    private static final List<Integer> SIZES = List.of(1, 3, 10);
    /** Rounds that count with the book as it is, and as many again before them; fewer with larger ones. */
    private static final int ROUNDS = 7;
    private static final long SEED = 20261125;

    private enum Stage {
        /** The network that stands, solved. */
        INFERENCE,
        /** From the case to all posteriors. */
        DIAGNOSIS,
        /** The phones it may be. */
        DRAWING,
        /** What can be done and decided, and what that costs; drawing included. */
        BUILDING,
        PLANNING,
        /** The policy to the end of every likely branch; not needed for a ranking. */
        SHEET
    }

    private PlanningBenchmark() {}

    /** Prints a row for each case and size; the sizes may be named. */
    public static void main(String[] arguments) throws IOException {
        PrintStream out = System.out;
        RuleBook rules = RuleBookReader.readShipped().ruleBook().orElseThrow();
        PriceBook prices = PriceBookReader.readShipped(rules).priceBook().orElseThrow();
        Shop shop = ShopReader.readShipped(rules).shop().orElseThrow();
        List<Path> files;
        try (Stream<Path> all = Files.list(CASES)) {
            files = all.filter(f -> f.toString().endsWith(".json")).sorted().toList();
        }
        out.println("milliseconds; times: diagnosis, building and planning over one inference");
        out.println("size case                                      decisions inference diagnosis drawing building"
                + " planning  sheet   times allowed");
        List<Integer> sizes = arguments.length == 0
                ? SIZES
                : Stream.of(arguments).map(Integer::valueOf).toList();
        for (int size : sizes) {
            for (Path file : files) {
                GrownBook grown = new GrownBook(rules, size, SEED);
                String name = file.getFileName().toString().replace(".json", "");
                try {
                    row(out, size, name, grown.rules(), grown.told(CaseFileStore.read(file)), prices, shop);
                } catch (CliqueLimitException e) {
                    out.println(size + " " + name + ": too entangled to be solved exactly");
                }
            }
        }
    }

    private static void row(
            PrintStream out, int size, String name, RuleBook whole, CaseFile file, PriceBook prices, Shop shop) {
        RuleBook rules = whole.of(file.phone().family());
        RepairCosts costs = new RepairCosts(rules, prices, shop, file.phone());
        Terms terms = Terms.of(file, shop);
        Diagnosis diagnosis = new Diagnostician(rules).chances(file);
        int decisions = BenchPolicy.of(rules, costs, diagnosis, terms)
                .problem()
                .endings()
                .size();
        Map<Stage, double[]> taken = new EnumMap<>(Stage.class);
        int rounds = Math.max(1, ROUNDS / size);
        for (int round = -rounds; round < rounds; round++) {
            int at = round;
            Planning planning = timed(taken, rounds, Stage.BUILDING, at, () -> new Planning(rules, costs, diagnosis, terms));
            timed(taken, rounds, Stage.INFERENCE, at, () -> diagnosis.solver().solve(diagnosis.evidence()));
            timed(taken, rounds, Stage.DIAGNOSIS, at, () -> new Diagnostician(rules).chances(file));
            timed(taken, rounds, Stage.DRAWING, at, () -> diagnosis.possiblePhones(Planner.WORLDS, SEED));
            timed(taken, rounds, Stage.PLANNING, at, planning::plan);
            timed(taken, rounds, Stage.SHEET, at, planning::sheet);
        }
        Map<Stage, Double> ms = new TreeMap<>();
        taken.forEach((stage, all) -> ms.put(stage, median(all)));
        double again = at(ms, Stage.DIAGNOSIS) + at(ms, Stage.BUILDING) + at(ms, Stage.PLANNING);
        out.println(String.format(
                Locale.ROOT,
                "%4d %-41s %9d %9.2f %9.1f %7.1f %8.1f %8.1f %6.0f %7.0f %7d",
                size,
                name,
                decisions,
                at(ms, Stage.INFERENCE),
                at(ms, Stage.DIAGNOSIS),
                at(ms, Stage.DRAWING),
                at(ms, Stage.BUILDING),
                at(ms, Stage.PLANNING),
                at(ms, Stage.SHEET),
                again / at(ms, Stage.INFERENCE),
                1 + 3 * decisions));
    }

    private static double at(Map<Stage, Double> ms, Stage stage) {
        return ms.getOrDefault(stage, Double.NaN);
    }

    private static <T> T timed(Map<Stage, double[]> taken, int rounds, Stage stage, int round, Supplier<T> work) {
        long before = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        T result = work.get();
        long after = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        if (round >= 0) {
            taken.computeIfAbsent(stage, s -> new double[rounds])[round] = (after - before) / 1e6;
        }
        return result;
    }

    private static double median(double[] all) {
        return Arrays.stream(all).sorted().toArray()[all.length / 2];
    }
}
