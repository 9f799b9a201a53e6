package hingewise.fuzz;

import com.code_intelligence.jazzer.api.FuzzedDataProvider;
import com.code_intelligence.jazzer.junit.FuzzTest;
import hingewise.casefile.CaseFile;
import hingewise.casefile.store.CaseFileException;
import hingewise.casefile.store.CaseFileStore;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

class CaseFileFuzzTest {
    @FuzzTest(maxDuration = "60s")
    void anyFileIsReadOrRefusedInWords(FuzzedDataProvider data) throws IOException {
        Path file = Files.createTempFile("case", ".json");
        try {
            Files.write(file, data.consumeRemainingAsBytes());
            CaseFile read = CaseFileStore.read(file);
            CaseFileStore.write(read, file);
            if (!CaseFileStore.read(file).equals(read)) {
                throw new AssertionError("written and read again, the case differs");
            }
        } catch (CaseFileException expected) {
            if (expected.getMessage().indexOf('\n') >= 0) {
                throw new AssertionError("a message of more than one line", expected);
            }
        } finally {
            Files.deleteIfExists(file);
        }
    }
}
