package hingewise.review;

import static org.assertj.core.api.Assertions.assertThat;

import hingewise.rulebook.RuleBook;
import hingewise.rulebook.yaml.Reading;
import hingewise.rulebook.yaml.RuleBookReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * The small rule book of the tests, to be changed.
 *
 * @param text of its one file
 */
public record Small(String text) {
    public static Small book() throws IOException {
        return new Small(Files.readString(Path.of("src/test/resources/rules-small/book.yaml")));
    }

    /** Puts a text in the place of another, which must be there. */
    public Small with(String old, String instead) {
        assertThat(text).contains(old);
        return new Small(text.replace(old, instead));
    }

    /** Adds entries to a section. */
    public Small adding(String section, String entries) {
        return with("\n" + section + ":\n", "\n" + section + ":\n" + entries);
    }

    public RuleBook readIn(Path folder) throws IOException {
        Files.writeString(folder.resolve("book.yaml"), text);
        Reading reading = RuleBookReader.read(folder);
        assertThat(reading.problems()).isEmpty();
        return reading.ruleBook().orElseThrow();
    }
}
