package hingewise.rulebook.yaml;

import java.io.IOException;
import java.net.JarURLConnection;
import java.net.URISyntaxException;
import java.net.URL;
import java.net.URLConnection;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Path;
import java.nio.file.ProviderNotFoundException;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** The rule book that comes with the program, wherever the program was started from. */
final class Shipped {
    private static final String FOLDER = "rules";

    /** What is wrong when it is not there. */
    static final List<Problem> MISSING = List.of(new Problem(
            Severity.ERROR,
            FOLDER,
            0,
            "the rule book that comes with the program cannot be found",
            "Install the program again, or name a rule book of your own."));

    private Shipped() {}

    /**
     * What comes of reading the folder {@code rules} that a class loader finds, in a directory or in a jar; empty when it
     * is not there. The folder is found by its book.yaml: a jar need not list its folders.
     */
    static <T> Optional<T> read(ClassLoader loader, Function<Folder, T> reader) {
        URL book = loader.getResource(FOLDER + "/book.yaml");
        if (book == null) {
            return Optional.empty();
        }
        try {
            URLConnection connection = book.openConnection();
            if (connection instanceof JarURLConnection jar) {
                Path file = Path.of(jar.getJarFileURL().toURI());
                try (FileSystem inside = FileSystems.newFileSystem(file)) {
                    return Optional.of(reader.apply(new Folder(inside.getPath("/" + FOLDER), FOLDER)));
                }
            }
            Path file = Path.of(book.toURI());
            return Optional.of(reader.apply(new Folder(file.resolveSibling("."), FOLDER)));
        } catch (IOException | URISyntaxException | ProviderNotFoundException e) {
            return Optional.empty();
        }
    }
}
