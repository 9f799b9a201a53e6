package hingewise.intake.sheet;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;

/** A folder for files that nobody needs afterwards. */
record Scratch(Path folder) implements Closeable {
    /** Beside this file, so that there is as much room as for the file itself. */
    static Scratch beside(Path file) throws IOException {
        Path folder = file.toAbsolutePath().getParent();
        return new Scratch(
                folder == null
                        ? Files.createTempDirectory("hingewise-")
                        : Files.createTempDirectory(folder, ".hingewise-"));
    }

    @Override
    public void close() throws IOException {
        try (DirectoryStream<Path> files = Files.newDirectoryStream(folder)) {
            for (Path file : files) {
                Files.delete(file);
            }
        }
        Files.delete(folder);
    }
}
