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
import java.util.function.Function;

/** The rule book that comes with the program, wherever the program was started from. */
final class Shipped {
    private Shipped() {}

    /**
     * Reads a folder among the resources of a class loader. The folder is found by its book.yaml: a jar need not list
     * its folders.
     */
    static Reading read(ClassLoader loader, String folder, Function<Folder, Reading> reader) {
        URL book = loader.getResource(folder + "/book.yaml");
        if (book == null) {
            return missing(folder);
        }
        try {
            URLConnection connection = book.openConnection();
            if (connection instanceof JarURLConnection jar) {
                Path file = Path.of(jar.getJarFileURL().toURI());
                try (FileSystem inside = FileSystems.newFileSystem(file)) {
                    return reader.apply(new Folder(inside.getPath("/" + folder), folder));
                }
            }
            Path file = Path.of(book.toURI());
            return reader.apply(new Folder(file.resolveSibling("."), folder));
        } catch (IOException | URISyntaxException | ProviderNotFoundException e) {
            return missing(folder);
        }
    }

    private static Reading missing(String folder) {
        Problem problem = new Problem(
                Severity.ERROR,
                folder,
                0,
                "the rule book that comes with the program cannot be found",
                "Install the program again, or name a rule book of your own.");
        return Reading.failed(List.of(problem));
    }
}
