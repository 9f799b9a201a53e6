package hingewise.terminal;

import java.io.BufferedWriter;
import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** Where long results go, in UTF-8 whatever the surrounding. */
final class SiftOutput {
    private SiftOutput() {}

    /** Something that writes and tells what came of it. */
    interface Work<T> {
        T write(Writer to) throws IOException;
    }

    /** Writes to a stream and leaves it open. */
    static <T> T to(OutputStream stream, Work<T> work) throws IOException {
        OutputStream kept = new FilterOutputStream(stream) {
            @Override
            public void write(byte[] bytes, int from, int length) throws IOException {
                out.write(bytes, from, length);
            }

            @Override
            public void close() throws IOException {
                flush();
            }
        };
        try (Writer writer = new BufferedWriter(new OutputStreamWriter(kept, StandardCharsets.UTF_8))) {
            return work.write(writer);
        }
    }

    /** Writes to a file beside, which takes the place of this one when it is complete. */
    static <T> T replace(Path file, Work<T> work) throws IOException {
        Path folder = file.toAbsolutePath().getParent();
        Path beside = folder == null
                ? Files.createTempFile(".hingewise-", ".tmp")
                : Files.createTempFile(folder, ".hingewise-", ".tmp");
        try {
            T result;
            try (Writer writer = Files.newBufferedWriter(beside)) {
                result = work.write(writer);
            }
            Files.move(beside, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
            return result;
        } finally {
            Files.deleteIfExists(beside);
        }
    }
}
