package hingewise.casefile.store;

import hingewise.casefile.CaseFile;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Objects;

/**
 * Case files on disk. Everything that can go wrong is said by a {@link CaseFileException} in one sentence; nothing else
 * is thrown, whatever the file holds.
 */
public final class CaseFileStore {
    /** The largest case file that is read or written: 16 MiB. A long case takes some 50 KiB. */
    public static final int LARGEST = 16 * 1024 * 1024;

    private CaseFileStore() {}

    /** The case in this file. */
    public static CaseFile read(Path file) {
        return open(file).caseFile();
    }

    /** The case in this file, with what {@link #save} needs to notice that somebody else changed it. */
    public static Stored open(Path file) {
        Source source = new Source(file);
        byte[] bytes = bytes(source);
        return new Stored(CaseFormat.decode(source, bytes), digest(bytes));
    }

    /** Puts the case into the file, whether or not there is one; on failure what was there stays as it was. */
    public static Stored write(CaseFile caseFile, Path file) {
        return write(caseFile, file, () -> {});
    }

    /** Puts a new case into a file that must not exist yet. */
    public static Stored create(CaseFile caseFile, Path file) {
        Source source = new Source(file);
        return write(caseFile, file, () -> {
            if (Files.exists(file)) {
                throw source.problem("exists already and is left as it is; choose another name");
            }
        });
    }

    /**
     * Puts a changed case into the file it was read from. The check is made at the last moment before the file is
     * replaced; two programs saving within the same few microseconds are not told apart.
     *
     * @throws CaseChangedException if the file is no longer as it was {@code before}
     */
    public static Stored save(Stored before, CaseFile caseFile, Path file) {
        return write(caseFile, file, () -> checkUnchanged(before, file));
    }

    private static void checkUnchanged(Stored before, Path file) {
        Source source = new Source(file);
        if (!Files.exists(file)) {
            throw new CaseChangedException(source.name()
                    + ": was moved or deleted since it was opened, so nothing was saved; save under a new name");
        }
        if (!digest(bytes(source)).equals(before.digest())) {
            throw new CaseChangedException(source.name()
                    + ": was changed by somebody else since it was opened, so nothing was saved;"
                    + " save under a new name, or open it again and repeat your change");
        }
    }

    private static Stored write(CaseFile caseFile, Path file, SafeFile.LastCheck check) {
        Source source = new Source(file);
        if (Files.isDirectory(file)) {
            throw source.problem("is a folder; name a file in it");
        }
        if (Files.exists(file) && !Files.isWritable(file)) {
            throw source.problem("is write-protected and was left as it is; save under another name");
        }
        byte[] bytes = encode(source, caseFile);
        try {
            SafeFile.replace(file, bytes, check);
        } catch (IOException e) {
            throw new CaseFileException(source.name() + ": " + notSaved(file, e), e);
        }
        return new Stored(caseFile, digest(bytes));
    }

    /** The bytes of the case, proven to read back as the same case. */
    private static byte[] encode(Source source, CaseFile caseFile) {
        byte[] bytes;
        CaseFile back;
        try {
            bytes = CaseFormat.encode(caseFile);
            back = CaseFormat.decode(source, bytes);
        } catch (IOException | CaseFileException e) {
            throw new CaseFileException("not saved, for the file would not open again: " + reason(e), e);
        }
        if (bytes.length > LARGEST) {
            throw source.problem("the case would be larger than 16 MiB and was not saved; shorten its remarks");
        }
        if (!back.equals(caseFile)) {
            throw source.problem("the case would not read back as it is and was not saved");
        }
        return bytes;
    }

    private static String notSaved(Path file, IOException e) {
        Path folder = Objects.requireNonNullElse(file.toAbsolutePath().getParent(), file);
        if (!Files.isDirectory(folder)) {
            return "could not be saved, for there is no folder \"" + new Source(folder).name()
                    + "\"; create it or choose another";
        }
        if (e instanceof AccessDeniedException || !Files.isWritable(folder)) {
            return "could not be saved, for the folder may not be written to; choose another folder";
        }
        return "could not be saved (" + reason(e) + "), and what was there before is untouched;"
                + " make room or choose another folder";
    }

    private static byte[] bytes(Source source) {
        Path file = source.file();
        if (Files.isDirectory(file)) {
            throw source.problem("is a folder; name a case file in it");
        }
        if (Files.exists(file) && !Files.isRegularFile(file)) {
            throw source.problem("is not an ordinary file; name a case file");
        }
        try (InputStream in = Files.newInputStream(file)) {
            // The size decides first, so that an enormous file costs nothing; it may still grow while it is read.
            if (Files.size(file) > LARGEST) {
                throw tooLarge(source);
            }
            byte[] bytes = in.readNBytes(LARGEST + 1);
            if (bytes.length > LARGEST) {
                throw tooLarge(source);
            }
            return bytes;
        } catch (NoSuchFileException e) {
            throw new CaseFileException(source.name() + ": there is no such file; check its name and folder", e);
        } catch (AccessDeniedException e) {
            throw new CaseFileException(source.name() + ": may not be read; change its permissions", e);
        } catch (IOException e) {
            throw new CaseFileException(source.name() + ": could not be read (" + reason(e) + "); try again", e);
        }
    }

    private static CaseFileException tooLarge(Source source) {
        return source.problem("is larger than 16 MiB, so it is no case file; choose another");
    }

    private static String reason(Exception e) {
        return Objects.requireNonNullElse(e.getMessage(), e.getClass().getSimpleName());
    }

    private static String digest(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
