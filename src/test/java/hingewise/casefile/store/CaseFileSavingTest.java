package hingewise.casefile.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assumptions.assumeThat;

import hingewise.casefile.CaseFile;
import hingewise.casefile.Phone;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CaseFileSavingTest {
    @TempDir
    Path folder;

    @Test
    void savingOverWhatWasReadSucceedsAgainAndAgain() {
        Path file = folder.resolve("case.json");
        Stored first = CaseFileStore.create(titled("one"), file);
        Stored second = CaseFileStore.save(first, titled("two"), file);
        CaseFileStore.save(second, titled("three"), file);
        assertThat(CaseFileStore.read(file)).isEqualTo(titled("three"));
        assertThat(CaseFileStore.open(file).digest()).isNotEqualTo(second.digest());
    }

    @Test
    void aChangeBySomebodyElseIsNotOverwritten() {
        Path file = folder.resolve("case.json");
        Stored mine = CaseFileStore.create(titled("one"), file);
        CaseFileStore.write(titled("theirs"), file);
        assertThatExceptionOfType(CaseChangedException.class)
                .isThrownBy(() -> CaseFileStore.save(mine, titled("mine"), file))
                .withMessageContaining("was changed by somebody else since it was opened, so nothing was saved");
        assertThat(CaseFileStore.read(file)).isEqualTo(titled("theirs"));
        assertOnly("case.json");
    }

    @Test
    void aFileThatVanishedIsNotQuietlyMadeAnew() throws IOException {
        Path file = folder.resolve("case.json");
        Stored mine = CaseFileStore.create(titled("one"), file);
        Files.delete(file);
        assertThatExceptionOfType(CaseChangedException.class)
                .isThrownBy(() -> CaseFileStore.save(mine, titled("mine"), file))
                .withMessageContaining("moved or deleted");
        assertOnly();
    }

    @Test
    void aNewCaseDoesNotReplaceAnOldOne() {
        Path file = folder.resolve("case.json");
        CaseFileStore.create(titled("old"), file);
        assertNotSaved(() -> CaseFileStore.create(titled("new"), file), "exists already and is left as it is");
        assertThat(CaseFileStore.read(file)).isEqualTo(titled("old"));
    }

    @Test
    void aFullDiskLeavesTheOldContentAndNoLitter() {
        Path file = folder.resolve("case.json");
        CaseFileStore.create(titled("old"), file);
        assertThatExceptionOfType(IOException.class)
                .isThrownBy(() -> SafeFile.replace(file, new byte[100], () -> {}, (fresh, bytes) -> {
                    SafeFile.writeThrough(fresh, new byte[50]);
                    throw new IOException("No space left on device");
                }))
                .withMessage("No space left on device");
        assertThat(CaseFileStore.read(file)).isEqualTo(titled("old"));
        assertOnly("case.json");
    }

    @Test
    void theLitterOfACrashDoesNotStandInTheWay() throws IOException {
        Path file = folder.resolve("case.json");
        Files.writeString(folder.resolve(".case.json.1.tmp"), "half a ca");
        CaseFileStore.write(titled("new"), file);
        assertThat(CaseFileStore.read(file)).isEqualTo(titled("new"));
        assertOnly(".case.json.1.tmp", "case.json");
    }

    @Test
    void aVanishedFolderIsNamed() {
        Path file = folder.resolve("gone").resolve("case.json");
        assertNotSaved(
                () -> CaseFileStore.write(titled("new"), file),
                "could not be saved, for there is no folder \"" + folder.resolve("gone")
                        + "\"; create it or choose another");
    }

    @Test
    void aFolderIsNotACaseFile() {
        assertNotSaved(() -> CaseFileStore.write(titled("new"), folder), "is a folder; name a file in it");
    }

    @Test
    void aReadOnlyFolderAndAReadOnlyFileAreSaid() throws IOException {
        Path closed = Files.createDirectory(folder.resolve("closed"));
        Path file = closed.resolve("case.json");
        CaseFileStore.create(titled("old"), file);
        Files.setPosixFilePermissions(closed, PosixFilePermissions.fromString("r-xr-xr-x"));
        try {
            assumeThat(Files.isWritable(closed)).as("not the superuser").isFalse();
            assertNotSaved(() -> CaseFileStore.write(titled("new"), file), "the folder may not be written to");
            Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("r--r--r--"));
            assertNotSaved(() -> CaseFileStore.write(titled("new"), file), "is write-protected");
            assertThat(CaseFileStore.read(file)).isEqualTo(titled("old"));
        } finally {
            Files.setPosixFilePermissions(closed, PosixFilePermissions.fromString("rwxr-xr-x"));
        }
    }

    @Test
    void aLinkStaysALinkAndPermissionsStay() throws IOException {
        Path file = folder.resolve("case.json");
        CaseFileStore.create(titled("old"), file);
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-rw----"));
        Path link = Files.createSymbolicLink(folder.resolve("link.json"), file.getFileName());
        CaseFileStore.write(titled("new"), link);
        assertThat(link).isSymbolicLink();
        assertThat(CaseFileStore.read(file)).isEqualTo(titled("new"));
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
                .isEqualTo("rw-rw----");
    }

    @Test
    void aCaseThatWouldNotOpenAgainIsNotSaved() {
        Path file = folder.resolve("case.json");
        assertNotSaved(() -> CaseFileStore.write(titled(" "), file), "\"title\" of the case is blank");
        assertNotSaved(() -> CaseFileStore.write(titled("half \uD83D"), file), "not saved");
        assertNotSaved(() -> CaseFileStore.write(titled("x".repeat(17 << 20)), file), "larger than 16 MiB");
        assertOnly();
    }

    private static CaseFile titled(String title) {
        return new CaseFile(title, true, new Phone("book", "Invented Two"), List.of());
    }

    private static void assertNotSaved(Runnable saving, String says) {
        assertThatExceptionOfType(CaseFileException.class)
                .isThrownBy(saving::run)
                .withMessageContaining(says);
    }

    private void assertOnly(String... names) {
        assertThat(folder.toFile().list()).containsExactlyInAnyOrder(names);
    }
}
