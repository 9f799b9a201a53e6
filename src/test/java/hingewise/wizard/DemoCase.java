package hingewise.wizard;

import hingewise.casefile.CaseFile;
import hingewise.casefile.Phone;
import hingewise.casefile.Report;
import hingewise.casefile.store.CaseFileStore;
import hingewise.rulebook.EvidenceKind;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** An invented case with a few answers in it. */
public final class DemoCase {
    private DemoCase() {}

    public static Path in(Path folder) {
        CaseFile file = new CaseFile(
                "Clamshell with a dark outer screen", true, new Phone("clamshell", "Invented Fold, blue"), List.of());
        for (String seen : List.of(
                "dead-cover-screen=yes@claim",
                "back-loose=yes@photo",
                "was-opened=no@claim",
                "was-dropped=yes@claim")) {
            String[] parts = seen.split("[=@]");
            file = file.with(new Report(
                    file.nextId(),
                    Bench.NOW,
                    "desk",
                    EvidenceKind.valueOf(parts[2].toUpperCase(java.util.Locale.ROOT)),
                    parts[0],
                    parts[1],
                    Optional.empty(),
                    ""));
        }
        Path path = folder.resolve("dark-outer-screen.json");
        CaseFileStore.write(file, path);
        return path;
    }
}
