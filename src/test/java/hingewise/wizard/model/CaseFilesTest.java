package hingewise.wizard.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import hingewise.casefile.CaseFile;
import hingewise.casefile.Phone;
import hingewise.casefile.store.CaseFileStore;
import hingewise.wizard.Bench;
import hingewise.wizard.DemoCase;
import hingewise.wizard.model.Saving.Status;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CaseFilesTest {
    @TempDir
    Path folder;

    @Test
    void aFileOfANewerVersionIsRefusedAndWhatIsOpenStaysOpen() throws IOException {
        WizardModel model = Bench.model(folder);
        model.startNew("clamshell", "Mine");
        Path newer = folder.resolve("newer.json");
        Files.writeString(newer, "{\"format\": \"hingewise-case\", \"version\": 99}");
        model.open(newer);
        assertThat(model.state().notice().orElseThrow())
                .contains("newer Hingewise")
                .contains("update Hingewise");
        assertThat(model.state().sitting().orElseThrow().file().title()).isEqualTo("Mine");
    }

    @Test
    void aFileThatVanishesWhileOpenIsAConflictAndCanBeSavedElsewhere() throws IOException {
        WizardModel model = Bench.model(folder);
        model.startNew("clamshell", "Mine");
        Files.delete(folder.resolve("case-mine.json"));
        model.jump("crease-blobs");
        model.answer("yes");
        assertThat(model.state().saving().status()).isEqualTo(Status.CONFLICT);
        assertThat(model.state().saving().words()).contains("was moved or deleted");
        assertThat(model.answersTo("crease-blobs")).hasSize(1);

        Path elsewhere = folder.resolve("elsewhere.json");
        model.saveAs(elsewhere);
        assertThat(model.state().saving().status()).isEqualTo(Status.SAVED);
        assertThat(CaseFileStore.read(elsewhere))
                .isEqualTo(model.state().sitting().orElseThrow().file());
    }

    @Test
    void somebodyElsesChangeIsNeverOverwrittenAndCanBeOpened() {
        WizardModel model = Bench.model(folder);
        model.startNew("clamshell", "Mine");
        CaseFile theirs = new CaseFile("Theirs", false, new Phone("clamshell", ""), List.of());
        CaseFileStore.write(theirs, folder.resolve("case-mine.json"));
        model.jump("crease-blobs");
        model.answer("yes");
        assertThat(model.state().saving().status()).isEqualTo(Status.CONFLICT);
        assertThat(CaseFileStore.read(folder.resolve("case-mine.json"))).isEqualTo(theirs);
        model.openAgain();
        assertThat(model.state().sitting().orElseThrow().file()).isEqualTo(theirs);
    }

    @Test
    void aFolderThatMayNotBeWrittenToLosesNothing() throws IOException {
        Path closed = Files.createDirectory(folder.resolve("closed"));
        WizardModel model = Bench.model(closed);
        model.startNew("clamshell", "Mine");
        Files.setPosixFilePermissions(closed, PosixFilePermissions.fromString("r-xr-xr-x"));
        assumeFalse(Files.isWritable(closed), "this user may write anywhere");
        model.jump("crease-blobs");
        model.answer("yes");
        assertThat(model.state().saving().status()).isEqualTo(Status.FAILED);
        assertThat(model.answersTo("crease-blobs")).hasSize(1);
        Files.setPosixFilePermissions(closed, PosixFilePermissions.fromString("rwxr-xr-x"));
        model.saveAgain();
        assertThat(model.state().saving().status()).isEqualTo(Status.SAVED);
    }

    @Test
    void aCaseFolderThatCannotBeMadeLosesNothing() throws IOException {
        Path file = Files.writeString(folder.resolve("in-the-way"), "");
        WizardModel model = Bench.model(file.resolve("cases"));
        model.startNew("clamshell", "Mine");
        assertThat(model.state().saving().status()).isEqualTo(Status.FAILED);
        model.jump("crease-blobs");
        model.answer("yes");
        model.saveAs(folder.resolve("kept.json"));
        assertThat(CaseFileStore.read(folder.resolve("kept.json")).entries()).hasSize(1);
    }

    @Test
    void aDemoCaseStaysAsItIs() throws IOException {
        Path demo = DemoCase.in(folder);
        String before = Files.readString(demo);
        WizardModel model = Bench.model(folder.resolve("cases"), demo);
        model.openCopy(demo);
        model.jump("crease-blobs");
        model.answer("yes");
        assertThat(model.state().saving().status()).isEqualTo(Status.NO_FILE);
        assertThat(Files.readString(demo)).isEqualTo(before);
    }

    @Test
    void aCaseThatTheRuleBookDoesNotKnowIsSaidInWords() {
        CaseFile strange = new CaseFile("Strange", false, new Phone("tablet", ""), List.of());
        Path file = folder.resolve("strange.json");
        CaseFileStore.write(strange, file);
        WizardModel model = Bench.model(folder);
        model.open(file);
        assertThat(model.state().reckoning().trouble().orElseThrow()).contains("\"tablet\" is not a family");
        assertThat(model.agenda()).isEmpty();
    }

    @Test
    void brokenFilesAreListedWithTheReason() throws IOException {
        Files.writeString(folder.resolve("broken.json"), "{");
        WizardModel model = Bench.model(folder);
        assertThat(model.state().shelf().own()).singleElement().satisfies(l -> {
            assertThat(l.title()).isEqualTo("broken.json");
            assertThat(l.about()).contains("broken.json:1");
        });
    }

    @Test
    void twoCasesOfOneNameHaveTwoFiles() {
        WizardModel model = Bench.model(folder);
        model.startNew("clamshell", "Müller / blue ☂");
        model.startNew("book", "Müller / blue ☂");
        assertThat(folder.resolve("case-muller-blue.json")).exists();
        assertThat(folder.resolve("case-muller-blue-2.json")).exists();
    }
}
