package hingewise.wizard.model;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.Locale;

/** Names for case files. */
final class FileNames {
    private static final int LONGEST = 60;

    private FileNames() {}

    /** A title as a file name without suffix: plain letters, digits and hyphens, safe on every system. */
    static String of(String title) {
        String plain = Normalizer.normalize(title, Normalizer.Form.NFKD)
                .toLowerCase(Locale.ROOT)
                .replaceAll("\\p{M}", "")
                .replaceAll("[^a-z0-9]+", "-")
                .replaceAll("^-|-$", "");
        String cut = plain.substring(0, Math.min(LONGEST, plain.length())).replaceAll("-$", "");
        // The prefix keeps clear of names that Windows reserves, such as "con".
        return cut.isEmpty() ? "case" : "case-" + cut;
    }

    /** A file that does not exist yet, in this folder, which is made where it is missing. */
    static Path free(Path folder, String title) throws IOException {
        Files.createDirectories(folder);
        String name = of(title);
        Path file = folder.resolve(name + ShelfReader.SUFFIX);
        for (int n = 2; Files.exists(file); n++) {
            file = folder.resolve(name + "-" + n + ShelfReader.SUFFIX);
        }
        return file;
    }
}
