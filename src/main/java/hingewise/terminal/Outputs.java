package hingewise.terminal;

import hingewise.plain.Quoted;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** Writes a file whole or not at all. */
final class Outputs {
    private Outputs() {}

    /** @param source the file the text was made from, which must not be the one replaced */
    static void replace(Path file, Path source, String text) {
        Path folder = file.toAbsolutePath().getParent();
        if (folder == null || Files.isDirectory(file)) {
            throw refusal(file, "is a folder; name a file in it");
        }
        if (!Files.isDirectory(folder)) {
            throw refusal(file, "cannot be written, for its folder does not exist; create it or choose another");
        }
        try {
            if (Files.exists(file) && Files.isSameFile(file, source)) {
                throw refusal(file, "is the case file itself, and was left as it is; choose another name");
            }
            Path beside = Files.createTempFile(folder, ".hingewise-", ".tmp");
            try {
                Files.writeString(beside, text);
                Files.move(beside, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
            } finally {
                Files.deleteIfExists(beside);
            }
        } catch (IOException e) {
            throw refusal(file, "could not be written (" + e + "); nothing was changed, choose another folder");
        }
    }

    private static Refusal refusal(Path file, String why) {
        return Refusal.badInput(Quoted.line(file.toString()) + ": " + why);
    }
}
