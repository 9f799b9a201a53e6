package hingewise.report.handbook;

import java.io.IOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Puts pages into a folder: all of them or none. */
public final class HandbookFolder {
    private HandbookFolder() {}

    /**
     * Writes the pages beside the folder and then puts them in its place. A folder that holds an earlier handbook and
     * nothing else is replaced.
     *
     * @throws DirectoryNotEmptyException if the folder holds anything that is no page of a handbook; the message names it
     * @throws IOException if it cannot be written; what was there before is left
     */
    public static void write(Path folder, Map<String, String> pages) throws IOException {
        Path target = folder.toAbsolutePath().normalize();
        Path parent = Optional.ofNullable(target.getParent())
                .orElseThrow(() -> new IOException("the root of a drive cannot be a handbook"));
        Optional<Path> foreign = foreign(target, pages.keySet());
        if (foreign.isPresent()) {
            throw new DirectoryNotEmptyException(foreign.get().toString());
        }
        Files.createDirectories(parent);
        Path fresh = Files.createTempDirectory(parent, ".handbook-");
        Path old = fresh.resolveSibling(fresh.getFileName() + "-old");
        try {
            for (Map.Entry<String, String> page : pages.entrySet()) {
                Files.writeString(fresh.resolve(page.getKey()), page.getValue());
            }
            makeReadable(fresh);
            boolean replaces = Files.exists(target);
            if (replaces) {
                move(target, old);
            }
            try {
                move(fresh, target);
            } catch (IOException e) {
                if (replaces) {
                    move(old, target);
                }
                throw e;
            }
        } finally {
            delete(fresh);
            delete(old);
        }
    }

    /** What is in the folder and is no page; also the folder itself, if it is a file. */
    private static Optional<Path> foreign(Path folder, Set<String> ours) throws IOException {
        if (Files.exists(folder) && !Files.isDirectory(folder)) {
            return Optional.of(folder);
        }
        if (!Files.exists(folder)) {
            return Optional.empty();
        }
        try (Stream<Path> inside = Files.list(folder)) {
            List<Path> all = inside.sorted().toList();
            return all.stream()
                    .filter(p -> !ours.contains(String.valueOf(p.getFileName())) || Files.isDirectory(p))
                    .findFirst();
        }
    }

    /** A temporary folder is made for its owner alone; a handbook is for everybody who may see the folder it is in. */
    private static void makeReadable(Path folder) throws IOException {
        if (folder.getFileSystem().supportedFileAttributeViews().contains("posix")) {
            Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwxr-xr-x"));
        }
    }

    private static void move(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(from, to);
        }
    }

    /** Pages only; a folder with anything else in it stays. */
    private static void delete(Path folder) throws IOException {
        if (Files.isDirectory(folder)) {
            try (Stream<Path> inside = Files.list(folder)) {
                for (Path page : inside.toList()) {
                    Files.delete(page);
                }
            }
            Files.delete(folder);
        }
    }
}
