package hingewise.fuzz;

import com.code_intelligence.jazzer.api.FuzzedDataProvider;
import com.code_intelligence.jazzer.junit.FuzzTest;
import hingewise.casefile.CaseFile;
import hingewise.casefile.store.CaseFileException;
import hingewise.casefile.store.CaseFileStore;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

class CaseFileFuzzTest {
    private static final String START =
            """
            {"format": "hingewise-case", "version": 1, "title": "t", "invented": true, "phone": {"family": "book"},
             "entries": [{"id": "e1", "at": "2026-11-20T10:00:00Z", "by": "me", "kind": "try", "confirmation": "c"},
             {"id": "e2", "at": "2026-11-20T10:00:00Z", "by": "me", "kind": "look", "about": "a", "answer": "yes", """;

    @FuzzTest(maxDuration = "60s")
    void anyFileIsReadOrRefusedInWords(FuzzedDataProvider data) throws IOException {
        Path file = Files.createTempFile("case", ".json");
        try {
            Files.writeString(file, data.consumeBoolean() ? START : "");
            Files.write(file, data.consumeRemainingAsBytes(), StandardOpenOption.APPEND);
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
