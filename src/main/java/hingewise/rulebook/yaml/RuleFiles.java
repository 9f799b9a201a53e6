package hingewise.rulebook.yaml;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Optional;
import java.util.function.Function;

/**
 * Where a rule book stands, to be read in part or whole.
 *
 * @param folder of its files; empty for the rule book that comes with the program
 */
public record RuleFiles(Optional<Path> folder) {
    /** Those that come with the program. */
    public static final RuleFiles SHIPPED = new RuleFiles(Optional.empty());

    public static RuleFiles in(Path folder) {
        return new RuleFiles(Optional.of(folder));
    }

    /** Reads the rule book without its examples. */
    public Reading read() {
        return within(RuleBookReader::read).orElseGet(() -> Reading.failed(Shipped.MISSING));
    }

    /** Reads the rule book and all its examples, and lists the mistakes of both. */
    public WholeReading readWhole() {
        return within(RuleBookReader::readWhole).orElseGet(() -> WholeReading.failed(Shipped.MISSING));
    }

    /**
     * SHA-256 over the names and bytes of all files of the rule book, those with examples as well, by which it is known
     * again; empty when they cannot all be read.
     */
    public Optional<String> digest() {
        return within(RuleFiles::digestOf).flatMap(Function.identity());
    }

    private <T> Optional<T> within(Function<Folder, T> reader) {
        return folder.isPresent()
                ? Optional.of(reader.apply(Folder.at(folder.get())))
                : Shipped.read(RuleFiles.class.getClassLoader(), reader);
    }

    /** Files are told apart by where they stand in the folder, not by where that is. */
    private static Optional<String> digestOf(Folder folder) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            for (Document.Kind kind : Document.Kind.values()) {
                for (Folder.File file : folder.files(kind, new Problems())) {
                    byte[] name = (kind + "/" + file.path().getFileName()).getBytes(StandardCharsets.UTF_8);
                    byte[] text = Files.readAllBytes(file.path());
                    digest.update(ByteBuffer.allocate(2 * Integer.BYTES)
                            .putInt(name.length)
                            .putInt(text.length)
                            .flip());
                    digest.update(name);
                    digest.update(text);
                }
            }
            return Optional.of(HexFormat.of().formatHex(digest.digest()));
        } catch (IOException | Refusal e) {
            return Optional.empty();
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
