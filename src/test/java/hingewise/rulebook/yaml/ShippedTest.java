package hingewise.rulebook.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import hingewise.rulebook.RuleBook;
import java.io.IOException;
import java.io.OutputStream;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ShippedTest {
    @TempDir
    Path folder;

    private static Reading readFrom(Path place) throws IOException {
        try (URLClassLoader loader = new URLClassLoader(new URL[] {place.toUri().toURL()}, null)) {
            return RuleBookReader.readWithin(loader);
        }
    }

    private Path jar(SmallBook book) throws IOException {
        Path jar = folder.resolve("a program #1.jar");
        try (OutputStream out = Files.newOutputStream(jar);
                JarOutputStream zip = new JarOutputStream(out)) {
            for (Map.Entry<String, String> file : book.files().entrySet()) {
                zip.putNextEntry(new JarEntry("rules/" + file.getKey()));
                zip.write(file.getValue().getBytes(StandardCharsets.UTF_8));
            }
        }
        return jar;
    }

    @Test
    void theShippedRuleBookHasNoProblems() {
        Reading reading = RuleBookReader.readShipped();
        assertThat(reading.problems()).isEmpty();
        assertThat(reading.ruleBook().orElseThrow().causes()).isNotEmpty();
    }

    @Test
    void theRulesAreFoundInAJarThatListsNoFolders() throws IOException {
        Reading reading = readFrom(jar(SmallBook.whole()));
        assertThat(reading.problems()).isEmpty();
        assertThat(reading.ruleBook().map(RuleBook::title)).contains("A small rule book");
    }

    @Test
    void aJarIsReadTwiceWithoutTheFirstReadingStandingInTheWay() throws IOException {
        Path jar = jar(SmallBook.whole());
        assertThat(readFrom(jar)).isEqualTo(readFrom(jar));
    }

    @Test
    void theRulesAreFoundInAFolder() throws IOException {
        Path rules = Files.createDirectory(folder.resolve("rules"));
        SmallBook.whole().readIn(rules);
        assertThat(readFrom(folder).ruleBook().map(RuleBook::title)).contains("A small rule book");
    }

    @Test
    void aMistakeInAJarIsNamedByTheFileInside() throws IOException {
        SmallBook book = SmallBook.whole();
        Reading reading =
                readFrom(jar(book.with("acts.yaml", book.text("acts.yaml").replace("kind: try", "kind: tri"))));
        assertThat(reading.problems())
                .extracting(Problem::text)
                .containsExactly("rules/acts.yaml:26: \"tri\" is not a kind of confirmation. Did you mean \"try\"?");
    }

    @Test
    void aProgramWithoutRulesSaysSo() throws IOException {
        assertThat(readFrom(folder).problems())
                .singleElement()
                .extracting(Problem::text)
                .isEqualTo("rules: the rule book that comes with the program cannot be found. "
                        + "Install the program again, or name a rule book of your own.");
    }
}
