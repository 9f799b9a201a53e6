package hingewise.bench;

import hingewise.bench.Workload.Kind;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.concurrent.TimeUnit;

/** Tries a contender once in a process of its own, so that one that never ends or fills the memory can be stopped. */
final class Probe {
    private Probe() {}

    /** Arguments: kind, causes, positives, contender. */
    public static void main(String[] arguments) {
        Workload workload = Workload.of(
                Kind.valueOf(arguments[0]), Integer.parseInt(arguments[1]), Integer.parseInt(arguments[2]), 1);
        Contender.valueOf(arguments[3]).prepare(workload).get();
    }

    static boolean finishes(String kind, int causes, int positives, Contender contender, Duration limit)
            throws IOException, InterruptedException {
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xmx3g",
                        "-cp",
                        System.getProperty("java.class.path"),
                        Probe.class.getName(),
                        kind,
                        Integer.toString(causes),
                        Integer.toString(positives),
                        contender.name())
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
        boolean ended = process.waitFor(limit.toMillis(), TimeUnit.MILLISECONDS);
        if (!ended) {
            process.destroyForcibly().waitFor();
        }
        return ended && process.exitValue() == 0;
    }
}
