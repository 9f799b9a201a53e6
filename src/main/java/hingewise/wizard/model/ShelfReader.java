package hingewise.wizard.model;

import hingewise.casefile.CaseFile;
import hingewise.casefile.store.CaseFileException;
import hingewise.casefile.store.CaseFileStore;
import hingewise.wizard.model.Shelf.Listed;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** Lists case files. A file that cannot be read is listed too, with the reason. */
public final class ShelfReader {
    /** How a case file's name ends. */
    public static final String SUFFIX = ".json";

    private static final int LISTED_AT_MOST = 40;

    private ShelfReader() {}

    /**
     * @param cases the person's case folder; may be missing
     * @param demos case files that come with the program
     */
    public static Shelf read(Path cases, List<Path> demos) throws IOException {
        return new Shelf(
                newestFirst(cases).stream().map(ShelfReader::listed).toList(),
                demos.stream().map(ShelfReader::listed).toList());
    }

    private static List<Path> newestFirst(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        record Dated(Path file, FileTime changed) {}
        try (Stream<Path> files = Files.list(folder)) {
            List<Dated> dated = new java.util.ArrayList<>();
            for (Path file : files.filter(ShelfReader::looksLikeCase).toList()) {
                dated.add(new Dated(file, Files.getLastModifiedTime(file)));
            }
            return dated.stream()
                    .sorted(Comparator.comparing(Dated::changed).reversed().thenComparing(d -> d.file()))
                    .limit(LISTED_AT_MOST)
                    .map(Dated::file)
                    .toList();
        }
    }

    private static boolean looksLikeCase(Path file) {
        String name = file.getFileName().toString();
        return name.endsWith(SUFFIX) && !name.startsWith(".") && Files.isRegularFile(file);
    }

    private static Listed listed(Path file) {
        try {
            CaseFile read = CaseFileStore.read(file);
            String phone = read.phone().label().isBlank()
                    ? read.phone().family()
                    : read.phone().label();
            int answers = read.entries().size();
            return new Listed(read.title(), phone + " · " + answers + (answers == 1 ? " entry" : " entries"), file);
        } catch (CaseFileException e) {
            return new Listed(file.getFileName().toString(), Words.of(e), file);
        }
    }
}
