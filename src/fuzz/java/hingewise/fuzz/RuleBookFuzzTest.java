package hingewise.fuzz;

import com.code_intelligence.jazzer.api.FuzzedDataProvider;
import com.code_intelligence.jazzer.junit.FuzzTest;
import hingewise.rulebook.yaml.Problem;
import hingewise.rulebook.yaml.Reading;
import hingewise.rulebook.yaml.RuleBookReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.stream.Stream;

/** Whatever the bytes of a rule file, they are read or reported. */
class RuleBookFuzzTest {
    @FuzzTest(maxDuration = "60s")
    void anyTwoFilesAreReadOrReported(FuzzedDataProvider data) throws IOException {
        Path folder = Files.createTempDirectory("rules");
        try {
            byte[] first = data.consumeBytes(data.remainingBytes() / 2);
            Files.write(folder.resolve("a.yaml"), first);
            Files.write(folder.resolve("b.yaml"), data.consumeRemainingAsBytes());
            check(RuleBookReader.read(folder));
        } finally {
            delete(folder);
        }
    }

    private static void check(Reading reading) {
        if (reading.ruleBook().isPresent() != reading.problems().isEmpty()) {
            throw new AssertionError("neither read nor reported");
        }
        for (Problem problem : reading.problems()) {
            if (problem.line() < 0 || problem.text().contains("\n")) {
                throw new AssertionError(problem.text());
            }
        }
    }

    private static void delete(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }
}
