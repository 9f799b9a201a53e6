package hingewise.rulebook.yaml;

import hingewise.rulebook.Examples;
import hingewise.rulebook.RuleBook;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Reads a rule book from a folder of YAML files, in the format of rules/README.md. Whatever the files hold, the answer
 * is a rule book without a mistake or a list of all its mistakes. Its example sentences are many times what else it
 * holds; {@link RuleFiles} reads them where they are needed.
 */
public final class RuleBookReader {
    private RuleBookReader() {}

    /** Reads the files ending in {@code .yaml} of a folder together, without its examples. */
    public static Reading read(Path folder) {
        return RuleFiles.in(folder).read();
    }

    /** Reads the rule book that comes with the program, without its examples. */
    public static Reading readShipped() {
        return RuleFiles.SHIPPED.read();
    }

    /** Reads the rule book that a class loader finds. */
    static Reading readWithin(ClassLoader loader) {
        return Shipped.read(loader, RuleBookReader::readWhole)
                .map(WholeReading::reading)
                .orElseGet(() -> Reading.failed(Shipped.MISSING));
    }

    static Reading read(Folder folder) {
        return read(folder, List.of(Document.Kind.RULES)).reading();
    }

    static WholeReading readWhole(Folder folder) {
        return read(folder, List.of(Document.Kind.RULES, Document.Kind.EXAMPLES));
    }

    private static WholeReading read(Folder folder, List<Document.Kind> kinds) {
        Problems problems = new Problems();
        List<Document> documents = new ArrayList<>();
        try {
            for (Document.Kind kind : kinds) {
                for (Folder.File file : folder.files(kind, problems)) {
                    document(file, kind, problems).ifPresent(documents::add);
                }
            }
        } catch (Refusal refusal) {
            refusal.tell(problems);
            return WholeReading.failed(problems.sorted());
        }
        boolean whole = problems.isEmpty();
        Entries entries = Entries.of(documents, problems);
        RuleBook rules = Assembly.of(documents, entries, whole, new Place(folder.name("book.yaml"), 0), problems);
        List<Examples> examples = Assembly.examples(entries, whole, problems);
        List<Problem> sorted = problems.sorted();
        Optional<RuleBook> sound = sorted.isEmpty() ? Optional.of(rules) : Optional.empty();
        return new WholeReading(new Reading(sound, sorted, entries.places()), examples);
    }

    private static Optional<Document> document(Folder.File file, Document.Kind kind, Problems problems) {
        try {
            return Optional.of(Document.read(Source.read(file.name(), file.path()), kind, problems));
        } catch (Refusal refusal) {
            refusal.tell(problems);
            return Optional.empty();
        }
    }
}
