package hingewise.terminal;

import java.io.IOException;
import java.net.JarURLConnection;
import java.net.URISyntaxException;
import java.net.URL;
import java.net.URLConnection;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.ProviderNotFoundException;
import java.util.List;
import java.util.stream.Stream;

/** The case files that come with the program, in its jar or among its classes. */
final class DemoCases {
    private DemoCases() {}

    /** All of them by name; none if they cannot be found, for the program works without. */
    static List<Path> find() {
        URL prices = DemoCases.class.getResource("/demo-cases/prices.csv");
        if (prices == null) {
            return List.of();
        }
        try {
            URLConnection connection = prices.openConnection();
            if (connection instanceof JarURLConnection jar) {
                // Stays open as long as the program runs: the paths are read when a person asks for one.
                FileSystem inside =
                        FileSystems.newFileSystem(Path.of(jar.getJarFileURL().toURI()));
                return cases(inside.getPath("/demo-cases"));
            }
            return cases(Path.of(prices.toURI()).resolveSibling("."));
        } catch (IOException | URISyntaxException | ProviderNotFoundException e) {
            return List.of();
        }
    }

    private static List<Path> cases(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(f -> f.getFileName().toString().endsWith(".json"))
                    .sorted()
                    .toList();
        }
    }
}
