package hingewise.casefile.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;

/** Replaces a file as a whole: the new bytes go beside it and to the disk before they take its place. */
final class SafeFile {
    /** Puts bytes into a new file and through to the disk. */
    interface Writer {
        /** @throws FileAlreadyExistsException if there is such a file */
        void write(Path fresh, byte[] bytes) throws IOException;
    }

    /** Something that must still hold at the moment of replacing. */
    interface LastCheck {
        void run() throws IOException;
    }

    private static final int ATTEMPTS = 100;

    private SafeFile() {}

    static void replace(Path file, byte[] bytes, LastCheck check) throws IOException {
        replace(file, bytes, check, SafeFile::writeThrough);
    }

    static void replace(Path file, byte[] bytes, LastCheck check, Writer writer) throws IOException {
        // A link stays a link: what it points to is replaced.
        Path target = Files.exists(file) ? file.toRealPath() : file.toAbsolutePath();
        Path beside = writeBeside(target, bytes, writer);
        try {
            copyPermissions(target, beside);
            check.run();
            Files.move(beside, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException | RuntimeException e) {
            Files.deleteIfExists(beside);
            throw e;
        }
        syncFolder(target);
    }

    private static Path writeBeside(Path target, byte[] bytes, Writer writer) throws IOException {
        for (int attempt = 1; ; attempt++) {
            Path beside = target.resolveSibling("." + target.getFileName() + "." + attempt + ".tmp");
            try {
                writer.write(beside, bytes);
                return beside;
            } catch (FileAlreadyExistsException e) {
                if (attempt == ATTEMPTS) {
                    throw e;
                }
            } catch (IOException | RuntimeException e) {
                Files.deleteIfExists(beside);
                throw e;
            }
        }
    }

    static void writeThrough(Path fresh, byte[] bytes) throws IOException {
        try (FileChannel channel = FileChannel.open(fresh, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
            ByteBuffer left = ByteBuffer.wrap(bytes);
            while (left.hasRemaining()) {
                channel.write(left);
            }
            channel.force(true);
        }
    }

    private static void copyPermissions(Path from, Path to) throws IOException {
        if (Files.exists(from) && Files.getFileStore(from).supportsFileAttributeView(PosixFileAttributeView.class)) {
            Files.setPosixFilePermissions(to, Files.getPosixFilePermissions(from));
        }
    }

    /** Makes the new name itself survive a power cut, where the system lets a folder be opened (Windows does not). */
    private static void syncFolder(Path file) {
        Path folder = file.getParent();
        if (folder == null) {
            return;
        }
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException e) {
            // The file is complete and in place; only its survival of a power cut is less sure.
            return;
        }
    }
}
