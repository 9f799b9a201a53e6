package hingewise.wizard;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** The first demo case that comes with the program. */
public final class DemoCase {
    public static final String TITLE = "Buzzes at power-on, no image inside";

    private static final Path SHIPPED = Path.of("demo-cases", "clamshell-buzzes-no-image.json");

    private DemoCase() {}

    /** A copy of it in this folder. */
    public static Path in(Path folder) throws IOException {
        return Files.copy(SHIPPED, folder.resolve("demo.json"));
    }
}
