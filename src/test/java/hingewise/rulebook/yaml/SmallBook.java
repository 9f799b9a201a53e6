package hingewise.rulebook.yaml;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * A small complete rule book of the test resources, to be spoilt.
 *
 * @param files text by file name
 */
record SmallBook(Map<String, String> files) {
    static final List<String> NAMES = List.of("acts.yaml", "book.yaml", "phone.yaml", "questions.yaml");

    static SmallBook whole() throws IOException {
        Map<String, String> files = new LinkedHashMap<>();
        for (String name : NAMES) {
            files.put(name, resource("small/" + name));
        }
        return new SmallBook(files);
    }

    static String resource(String name) throws IOException {
        try (var in = Objects.requireNonNull(SmallBook.class.getResourceAsStream(name), name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    String text(String name) {
        return Objects.requireNonNull(files.get(name), name);
    }

    SmallBook with(String name, String text) {
        Map<String, String> changed = new LinkedHashMap<>(files);
        changed.put(name, text);
        return new SmallBook(changed);
    }

    SmallBook without(String name) {
        Map<String, String> changed = new LinkedHashMap<>(files);
        changed.remove(name);
        return new SmallBook(changed);
    }

    /** Writes the files into the folder and reads them there; problems name the files alone. */
    Reading readIn(Path folder) throws IOException {
        for (Map.Entry<String, String> file : files.entrySet()) {
            Files.writeString(folder.resolve(file.getKey()), file.getValue());
        }
        return RuleBookReader.readWhole(new Folder(folder, "")).reading();
    }
}
