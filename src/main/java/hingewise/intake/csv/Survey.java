package hingewise.intake.csv;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * What one look through a sheet tells before its rows are read.
 *
 * @param bytes how long it is
 * @param digest its SHA-256, by which it is known again
 * @param encoding a guess: UTF-8 unless more of what is not plain ASCII fails to be UTF-8 than is
 * @param begins where the text begins: 3 behind a byte order mark, else 0
 * @param notUtf8 the first line with a byte that is not UTF-8, from 1; 0 when all is
 */
public record Survey(long bytes, String digest, Encoding encoding, int begins, long notUtf8) {
    private static final int CHUNK = 1 << 16;
    private static final int MARK = 3;

    /** @throws SheetException if it is no file of text that could be a sheet */
    public static Survey of(Path file) throws IOException {
        if (Files.isDirectory(file)) {
            throw SheetException.of(file, "is a folder; name a sheet in it");
        }
        if (Files.exists(file) && !Files.isRegularFile(file)) {
            throw SheetException.of(
                    file, "is not an ordinary file; save the sheet as one, for it is read more than once");
        }
        try (InputStream in = Files.newInputStream(file)) {
            return of(file, in);
        } catch (NoSuchFileException e) {
            throw SheetException.of(file, "there is no such file; check its name and folder");
        } catch (AccessDeniedException e) {
            throw SheetException.of(file, "may not be read; change its permissions");
        }
    }

    private static Survey of(Path file, InputStream in) throws IOException {
        MessageDigest digest = sha256();
        Utf8Count count = new Utf8Count();
        byte[] chunk = new byte[CHUNK];
        long bytes = 0;
        int begins = 0;
        for (int n = in.readNBytes(chunk, 0, CHUNK); n > 0; n = in.readNBytes(chunk, 0, CHUNK)) {
            if (bytes == 0) {
                refuseOtherFormats(file, chunk, n);
                begins = n >= MARK && chunk[0] == (byte) 0xEF && chunk[1] == (byte) 0xBB && chunk[2] == (byte) 0xBF
                        ? MARK
                        : 0;
            }
            digest.update(chunk, 0, n);
            count.add(chunk, bytes == 0 ? begins : 0, n);
            bytes += n;
        }
        if (bytes == begins) {
            throw SheetException.of(file, "is empty; begin with a row that names the columns");
        }
        count.end();
        Encoding encoding = begins == 0 && count.wrong() > count.good() ? Encoding.WINDOWS_1252 : Encoding.UTF_8;
        return new Survey(bytes, HexFormat.of().formatHex(digest.digest()), encoding, begins, count.firstWrongLine());
    }

    private static void refuseOtherFormats(Path file, byte[] chunk, int length) {
        if (length >= 2 && (chunk[0] & 0xFF) + (chunk[1] & 0xFF) == 0xFF + 0xFE) {
            throw SheetException.of(file, "is written in UTF-16; save it as UTF-8");
        }
        if (length >= 2 && chunk[0] == 'P' && chunk[1] == 'K') {
            throw SheetException.of(
                    file, "is a packed file such as a spreadsheet program's own; save it as CSV in UTF-8");
        }
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
