package hingewise.intake.csv;

import java.io.Closeable;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** The bytes of a file one by one, from any place. */
final class Bytes implements Closeable {
    /** What {@link #peek} gives behind the last byte. */
    static final int END = -1;

    private final FileChannel channel;
    private final ByteBuffer buffer = ByteBuffer.allocate(1 << 16);
    /** Where in the file the buffer begins. */
    private long base;

    Bytes(Path file, long from) throws IOException {
        channel = FileChannel.open(file, StandardOpenOption.READ);
        buffer.limit(0);
        base = from;
    }

    long position() {
        return base + buffer.position();
    }

    void go(long to) {
        base = to;
        buffer.position(0).limit(0);
    }

    /** The next byte as 0–255, which stays the next. */
    int peek() throws IOException {
        if (!buffer.hasRemaining()) {
            base += buffer.limit();
            buffer.clear();
            int read = channel.read(buffer, base);
            buffer.flip();
            if (read <= 0) {
                return END;
            }
        }
        return buffer.get(buffer.position()) & 0xFF;
    }

    /** Passes over the byte that was peeked at. */
    void skip() {
        buffer.position(buffer.position() + 1);
    }

    @Override
    public void close() throws IOException {
        channel.close();
    }
}
