package hingewise.intake.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import hingewise.intake.Learned;
import hingewise.intake.store.Store.Origin;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What was kept is used for the rule book that it was learned from, and for no other. */
class StoreTest {
    private static final List<String> LANGUAGES = List.of("en");

    @TempDir
    Path folder;

    private Taught taught = new Taught(Path.of("."));
    private Origin origin = new Origin("", "", "");
    private byte[] file = new byte[0];

    @BeforeEach
    void keep() throws IOException {
        taught = Taught.in(folder).saying("bent");
        origin = new Origin(taught.digest(), taught.lessons(), "some code");
        file = Store.file(origin, packed(taught.learned()));
    }

    private static byte[] packed(Learned learned) throws IOException {
        return Objects.requireNonNull(learned.packed().get("en"));
    }

    private static Store of(byte[] file) {
        return new Store(name -> name.equals(Store.name("en")) ? Optional.of(file) : Optional.empty());
    }

    @Test
    void whatWasKeptComesBackBitByBit() throws IOException {
        Learned found = of(file).find(LANGUAGES, origin::equals).orElseThrow();
        assertThat(packed(found)).isEqualTo(packed(taught.learned()));
    }

    @Test
    void anEditedExampleMakesAnotherRuleBook() throws IOException {
        taught.saying("crooked");
        assertThat(of(file).find(LANGUAGES, o -> o.rules().equals(taught.digest())))
                .isEmpty();
        assertThat(Taught.read(Readers.of(of(file), taught.files(), taught.rules(), () -> {}), "It is crooked."))
                .containsExactly("dent=yes");
        assertThat(Taught.read(Readers.of(of(file), taught.files(), taught.rules(), () -> {}), "It is bent."))
                .isEmpty();
    }

    @Test
    void theSameRuleBookInAnotherFolderIsKnownAgain(@TempDir Path other) throws IOException {
        assertThat(Taught.in(other).saying("bent").digest()).isEqualTo(origin.rules());
    }

    @Test
    void whatWasKeptIsReadByInsteadOfTheExamples() throws IOException {
        byte[] otherwise = Store.file(origin, packed(taught.saying("crooked").learned()));
        taught.saying("bent");
        assertThat(Taught.read(Readers.of(of(otherwise), taught.files(), taught.rules(), () -> {}), "It is crooked."))
                .containsExactly("dent=yes");
    }

    @Test
    void aLanguageThatIsMissingMakesAllBeLearned() {
        assertThat(of(file).find(List.of("en", "de"), origin::equals)).isEmpty();
    }

    @Test
    void aRuleBookWithOtherRulesButTheSameLessonsNeedNotBeLearned() throws IOException {
        byte[] otherwise = Store.file(
                new Origin("of other rules", taught.lessons(), "some code"),
                packed(taught.saying("crooked").learned()));
        taught.saying("bent");
        assertThat(Taught.read(Readers.of(of(otherwise), taught.files(), taught.rules(), () -> {}), "It is crooked."))
                .containsExactly("dent=yes");
    }

    @Test
    void aFileThatWasCutOffIsAsIfItWereNotThere() {
        for (int length = 0; length < file.length; length++) {
            assertThat(of(Arrays.copyOf(file, length)).find(LANGUAGES, origin::equals))
                    .as("%d bytes of %d", length, file.length)
                    .isEmpty();
        }
    }

    /** A bit may be wrong where it does not matter, such as in what is said of the code. */
    @Test
    void aDamagedFileTeachesNothingElse() throws IOException {
        byte[] whole = packed(taught.learned());
        Map<Boolean, Integer> used = new HashMap<>();
        for (int seed = 0; seed < 300; seed++) {
            Random random = new Random(seed);
            byte[] damaged = file.clone();
            damaged[random.nextInt(damaged.length)] ^= (byte) (1 << random.nextInt(Byte.SIZE));
            Optional<Learned> found = of(damaged).find(LANGUAGES, origin::equals);
            used.merge(found.isPresent(), 1, Integer::sum);
            if (found.isPresent()) {
                assertThat(packed(found.get())).as("seed %d", seed).isEqualTo(whole);
            }
        }
        assertThat(used.getOrDefault(false, 0)).isGreaterThan(200);
    }

    @Test
    void aFileOfAnotherMakeIsAsIfItWereNotThere() throws IOException {
        for (byte[] other : new byte[][] {{}, {1, 2, 3}, {0, 0, 0, 1, -1, 0, 0, 0}}) {
            assertThat(of(Store.file(origin, other)).find(LANGUAGES, origin::equals))
                    .isEmpty();
        }
    }

    @Test
    void mistakesInExamplesAreToldWhenTheyMustBeLearnedFrom() throws IOException {
        taught.saying("b\u202eent");
        assertThat(taught.files().read().problems()).isEmpty();
        assertThat(catchThrowableOfType(
                                ExamplesException.class, () -> Readers.of(taught.files(), taught.rules(), () -> {}))
                        .problems())
                .hasSize(8)
                .first()
                .asString()
                .contains("own.yaml:18: ", "cannot be seen");
    }
}
