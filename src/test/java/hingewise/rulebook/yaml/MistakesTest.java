package hingewise.rulebook.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The wanted messages are our own wording; what is a mistake is stated by rules/README.md. */
class MistakesTest {
    static Stream<Mistake> mistakes() throws IOException {
        return Stream.of("structure", "numbers", "references", "consistency", "models", "damages")
                .flatMap(name -> {
                    try {
                        return Mistake.all(SmallBook.resource("mistakes-" + name + ".txt"));
                    } catch (IOException e) {
                        throw new AssertionError(e);
                    }
                });
    }

    @ParameterizedTest
    @MethodSource("mistakes")
    void aMistakeIsReportedAtItsLineAndNothingElseIs(Mistake mistake, @TempDir Path folder) throws IOException {
        Reading reading = mistake.spoil(SmallBook.whole()).readIn(folder);
        assertThat(reading.problems()).extracting(Problem::text).containsExactlyElementsOf(mistake.said());
        assertThat(reading.ruleBook()).isEmpty();
    }
}
