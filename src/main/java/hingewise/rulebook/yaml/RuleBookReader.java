package hingewise.rulebook.yaml;

import hingewise.rulebook.RuleBook;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Reads a rule book from a folder of YAML files, in the format of rules/README.md. Whatever the files hold, the answer
 * is a rule book without a mistake or a list of all its mistakes.
 */
public final class RuleBookReader {
    private RuleBookReader() {}

    /** Reads the files ending in {@code .yaml} of a folder together. */
    public static Reading read(Path folder) {
        return read(Folder.at(folder));
    }

    /** Reads the rule book that comes with the program. */
    public static Reading readShipped() {
        return readWithin(RuleBookReader.class.getClassLoader());
    }

    /** Reads the folder {@code rules} that a class loader finds, in a directory or in a jar. */
    static Reading readWithin(ClassLoader loader) {
        return Shipped.read(loader, "rules", folder -> read(folder));
    }

    static Reading read(Folder folder) {
        Problems problems = new Problems();
        List<Document> documents = new ArrayList<>();

        try {
            for (Folder.File file : folder.files(problems)) {
                try {
                    documents.add(Document.read(Source.read(file.name(), file.path()), problems));
                } catch (Refusal refusal) {
                    refusal.tell(problems);
                }
            }
        } catch (Refusal refusal) {
            refusal.tell(problems);
            return Reading.failed(problems.sorted());
        }
        boolean whole = problems.isEmpty();
        Entries entries = Entries.of(documents, problems);
        RuleBook rules = Assembly.of(documents, entries, whole, new Place(folder.name("book.yaml"), 0), problems);
        List<Problem> sorted = problems.sorted();
        return new Reading(sorted.isEmpty() ? Optional.of(rules) : Optional.empty(), sorted, entries.places());
    }
}
