package hingewise.fuzz;

import com.code_intelligence.jazzer.api.FuzzedDataProvider;
import com.code_intelligence.jazzer.junit.FuzzTest;
import hingewise.rulebook.yaml.Problem;
import hingewise.rulebook.yaml.Reading;
import hingewise.rulebook.yaml.RuleBookReader;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.Objects;
import java.util.stream.Stream;

/** Whatever bytes stand in a rule book, it is read or reported. */
class RuleBookFuzzTest {
    private static final String WHOLE = "/hingewise/rulebook/yaml/small/";
    private static final String[] FILES = {"acts.yaml", "book.yaml", "phone.yaml", "questions.yaml"};

    @FuzzTest(maxDuration = "60s")
    void aBookWithAnyBytesInItIsReadOrReported(FuzzedDataProvider data) throws IOException {
        Path folder = Files.createTempDirectory("rules");
        try {
            String spoilt = data.pickValue(FILES);
            for (String name : FILES) {
                byte[] bytes = resource(name);
                Files.write(folder.resolve(name), name.equals(spoilt) ? spoil(bytes, data) : bytes);
            }
            check(RuleBookReader.read(folder));
        } finally {
            delete(folder);
        }
    }

    /** Replaces a stretch of the bytes by what the fuzzer gives. */
    private static byte[] spoil(byte[] bytes, FuzzedDataProvider data) {
        int from = data.consumeInt(0, bytes.length);
        int to = data.consumeInt(from, bytes.length);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(bytes, 0, from);
        out.writeBytes(data.consumeRemainingAsBytes());
        out.write(bytes, to, bytes.length - to);
        return out.toByteArray();
    }

    private static byte[] resource(String name) throws IOException {
        try (InputStream in = Objects.requireNonNull(RuleBookFuzzTest.class.getResourceAsStream(WHOLE + name), name)) {
            return in.readAllBytes();
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
