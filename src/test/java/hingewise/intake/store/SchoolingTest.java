package hingewise.intake.store;

import static org.assertj.core.api.Assertions.assertThat;

import hingewise.intake.Learned;
import hingewise.intake.ListingReader;
import hingewise.rulebook.RuleBook;
import hingewise.rulebook.yaml.RuleFiles;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the build makes of the rule book's examples. */
class SchoolingTest {
    private static final FileTime LONG_AGO = FileTime.fromMillis(0);

    @TempDir
    Path rules;

    @TempDir
    Path classes;

    private Taught taught = new Taught(Path.of("."));

    @BeforeEach
    void build() throws IOException {
        for (String room : new String[] {"intake", "rulebook", "plain"}) {
            Files.createDirectories(classes.resolve("hingewise").resolve(room));
        }
        Files.writeString(classes.resolve("hingewise/intake/Some.class"), "code");
        taught = Taught.in(rules).saying("bent");
        Schooling.teach(taught.files(), classes);
        Files.setLastModifiedTime(file(), LONG_AGO);
    }

    private Path file() {
        return classes.resolve("hingewise/intake/store").resolve(Store.name("en"));
    }

    private boolean untouched() throws IOException {
        return Files.getLastModifiedTime(file()).equals(LONG_AGO);
    }

    private Optional<Learned> kept() throws IOException {
        byte[] bytes = Files.readAllBytes(file());
        return new Store(name -> Optional.of(bytes))
                .find(taught.rules().languages().keySet(), o -> o.rules().equals(taught.digest()));
    }

    @Test
    void whatIsKeptIsOfTheseRules() throws IOException {
        assertThat(kept()).isPresent();
    }

    @Test
    void nothingIsLearnedAgainFromTheSameRulesByTheSameCode() throws IOException {
        Schooling.teach(taught.files(), classes);
        assertThat(untouched()).isTrue();
    }

    @Test
    void editedRulesAreLearnedFromAnew() throws IOException {
        taught.saying("crooked");
        Schooling.teach(taught.files(), classes);
        assertThat(kept()).isPresent();
        assertThat(untouched()).isFalse();
    }

    @Test
    void otherCodeLearnsAnew() throws IOException {
        Files.writeString(classes.resolve("hingewise/intake/Some.class"), "other code");
        Schooling.teach(taught.files(), classes);
        assertThat(kept()).isPresent();
        assertThat(untouched()).isFalse();
    }

    /** Whoever builds is not kept from it: check-rules and the tests tell what is wrong. */
    @Test
    void rulesWithAMistakeAreLeftUnlearned() throws IOException {
        taught.saying("b\u202eent");
        Schooling.teach(taught.files(), classes);
        assertThat(untouched()).isTrue();
        assertThat(kept()).isEmpty();
    }

    @Test
    void otherRulesWithTheSameLessonsKeepWhatWasLearned() throws IOException {
        byte[] learned = kept().orElseThrow().packed().get("en");
        Path words = rules.resolve("words.yaml");
        Files.writeString(words, Files.readString(words) + "# a remark\n");
        Schooling.teach(taught.files(), classes);
        assertThat(untouched()).isFalse();
        assertThat(kept().orElseThrow().packed().get("en")).isEqualTo(learned);
    }

    @Test
    void theProgramComesWithWhatItsOwnRulesTeach() {
        RuleBook shipped = RuleFiles.SHIPPED.read().ruleBook().orElseThrow();
        String lessons = Learned.digest(shipped, RuleFiles.SHIPPED.readWhole().examples());
        Learned kept = Store.SHIPPED
                .find(shipped.languages().keySet(), o -> o.lessons().equals(lessons))
                .orElseThrow(() -> new AssertionError("what was learned is missing or of other rules: build by Maven"));
        for (String text : new String[] {
            "The inner screen is cracked and the hinge creaks. Never opened, no water.",
            "Display innen gesplittert, lädt aber. Ohne Ladegerät."
        }) {
            assertThat(new ListingReader(shipped, kept).read(text).suggestions())
                    .isNotEmpty();
        }
    }
}
