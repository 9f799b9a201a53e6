package hingewise.intake.sheet;

import java.io.BufferedInputStream;
import java.io.BufferedOutputStream;
import java.io.Closeable;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UTFDataFormatException;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import java.util.zip.CRC32;

/**
 * Outcomes kept on disk, one behind the other. Each carries its length and a check sum, so that one which was cut off,
 * as by a loss of power, is noticed and done again.
 */
final class Spool {
    private static final String FORMAT = "hingewise-sift 1";
    private static final int BUFFER = 1 << 16;
    /** No outcome is longer; what seems longer is damaged. */
    private static final int LONGEST = 1 << 24;

    private final Path file;
    private final OutcomeCodec codec;

    Spool(Path file, OutcomeCodec codec) {
        this.file = file;
        this.codec = codec;
    }

    Path file() {
        return file;
    }

    /**
     * Begins the file, which must not be there yet.
     *
     * @param of what it belongs to
     */
    Writer create(String of) throws IOException {
        OutputStream to = Files.newOutputStream(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
        Writer writer = new Writer(to);
        writer.out.writeUTF(FORMAT);
        writer.out.writeUTF(of);
        writer.flush();
        return writer;
    }

    /**
     * Goes on behind the last whole outcome and forgets what follows it.
     *
     * @param end where that ends, see {@link Reader#end}
     */
    Writer append(long end) throws IOException {
        FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE);
        channel.truncate(end).position(end);
        return new Writer(Channels.newOutputStream(channel));
    }

    /** Reads from the start. */
    Reader read() throws IOException {
        return new Reader(Files.newInputStream(file));
    }

    private static int sum(byte[] bytes) {
        CRC32 crc = new CRC32();
        crc.update(bytes);
        return (int) crc.getValue();
    }

    /** Takes outcomes in order. */
    final class Writer implements Closeable {
        private final DataOutputStream out;

        private Writer(OutputStream to) {
            out = new DataOutputStream(new BufferedOutputStream(to, BUFFER));
        }

        void add(Outcome outcome) throws IOException {
            add(codec.bytes(outcome));
        }

        /** @param body an outcome's bytes */
        void add(byte[] body) throws IOException {
            out.writeInt(body.length);
            out.writeInt(sum(body));
            out.write(body);
        }

        /** Hands what was added to the system, so that the end of this program cannot lose it. */
        void flush() throws IOException {
            out.flush();
        }

        @Override
        public void close() throws IOException {
            out.close();
        }
    }

    /** Gives the whole outcomes in order. */
    final class Reader implements Closeable {
        private final DataInputStream in;
        private final Optional<String> of;
        private long end;

        private Reader(java.io.InputStream from) throws IOException {
            in = new DataInputStream(new BufferedInputStream(from, BUFFER));
            of = header();
        }

        private Optional<String> header() throws IOException {
            try {
                String format = in.readUTF();
                String owner = in.readUTF();
                // What writeUTF puts before each: its length in two bytes. Both are plain ASCII.
                end = 4L + format.length() + owner.length();
                return format.equals(FORMAT) ? Optional.of(owner) : Optional.empty();
            } catch (EOFException | UTFDataFormatException e) {
                return Optional.empty();
            }
        }

        /** What the file belongs to; nothing if it is no such file. */
        Optional<String> of() {
            return of;
        }

        /** The next outcome; nothing behind the last whole one. */
        Optional<Outcome> next() throws IOException {
            Optional<byte[]> body = nextBytes();
            return body.isPresent() ? Optional.of(codec.outcome(body.get())) : Optional.empty();
        }

        /** The next outcome's bytes; nothing behind the last whole one. */
        Optional<byte[]> nextBytes() throws IOException {
            try {
                int length = in.readInt();
                int sum = in.readInt();
                if (length <= 0 || length > LONGEST) {
                    return Optional.empty();
                }
                byte[] body = in.readNBytes(length);
                if (body.length < length || sum(body) != sum) {
                    return Optional.empty();
                }
                end += 8L + length;
                return Optional.of(body);
            } catch (EOFException e) {
                return Optional.empty();
            }
        }

        /** Where the last outcome that was given ends. */
        long end() {
            return end;
        }

        @Override
        public void close() throws IOException {
            in.close();
        }
    }
}
