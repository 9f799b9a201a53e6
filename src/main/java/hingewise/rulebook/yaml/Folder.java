package hingewise.rulebook.yaml;

import hingewise.plain.Quoted;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/**
 * A folder of rule files.
 *
 * @param shown how the folder is named in messages
 */
record Folder(Path path, String shown) {
    /** Within a rule book's folder, the one that holds its example sentences. */
    static final String EXAMPLES = "examples";

    /** More than any rule book has; a folder with more is not one. */
    private static final int MOST_FILES = 200;

    /** A file of the folder, and how it is named in messages. */
    record File(String name, Path path) {}

    static Folder at(Path path) {
        return new Folder(path, path.toString());
    }

    String name(String file) {
        return Quoted.line(shown.isEmpty() ? file : shown + "/" + file);
    }

    /** The files of a kind, by name. */
    List<File> files(Document.Kind kind, Problems problems) throws Refusal {
        return switch (kind) {
            case RULES -> rules(problems);
            case EXAMPLES -> examples(problems);
        };
    }

    /** At least one. */
    private List<File> rules(Problems problems) throws Refusal {
        Place folder = new Place(Quoted.line(shown.isEmpty() ? "." : shown), 0);
        if (!Files.exists(path)) {
            throw new Refusal(folder, "there is no such folder", "Name the folder that holds the rule book.");
        }
        if (!Files.isDirectory(path)) {
            throw new Refusal(folder, "this is not a folder", "Name the folder that holds the rule book.");
        }
        List<File> files = yaml(folder, problems);
        if (files.isEmpty()) {
            throw new Refusal(
                    folder, "there is no .yaml file in this folder", "Name the folder that holds the rule book.");
        }
        return files;
    }

    /** None when there is no folder of them. */
    private List<File> examples(Problems problems) throws Refusal {
        Folder inner = new Folder(path.resolve(EXAMPLES), shown.isEmpty() ? EXAMPLES : shown + "/" + EXAMPLES);
        return Files.isDirectory(inner.path())
                ? inner.yaml(new Place(Quoted.line(inner.shown()), 0), problems)
                : List.of();
    }

    private List<File> yaml(Place folder, Problems problems) throws Refusal {
        List<String> names = names(folder);
        names.stream()
                .filter(n -> n.endsWith(".yml"))
                .forEach(n -> problems.add(
                        new Place(name(n), 0),
                        "files ending in \".yml\" are not read",
                        "Let its name end in \".yaml\"."));
        List<File> files = names.stream()
                .filter(n -> n.endsWith(".yaml"))
                .map(n -> new File(name(n), path.resolve(n)))
                .toList();
        if (files.size() > MOST_FILES) {
            throw new Refusal(
                    folder,
                    "there are " + files.size() + " .yaml files in this folder, more than " + MOST_FILES,
                    "Name the folder that holds the rule book.");
        }
        return files;
    }

    /** Hidden files are passed over: editors keep their locks in them. */
    private List<String> names(Place folder) throws Refusal {
        try (Stream<Path> entries = Files.list(path)) {
            return entries.map(
                            p -> p.getFileName() == null ? "" : p.getFileName().toString())
                    .filter(n -> !n.startsWith("."))
                    .sorted()
                    .toList();
        } catch (IOException | UncheckedIOException e) {
            throw new Refusal(folder, "this folder cannot be read", "See that you may read it.");
        }
    }
}
