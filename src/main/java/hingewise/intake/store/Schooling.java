package hingewise.intake.store;

import hingewise.intake.Learned;
import hingewise.rulebook.RuleBook;
import hingewise.rulebook.yaml.RuleFiles;
import hingewise.rulebook.yaml.WholeReading;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.lucene.util.Version;

/**
 * A step of building the program: learns from the program's own rule book and puts what was learned beside the classes,
 * unless it stands there already.
 */
public final class Schooling {
    /** Where the code is that has a say in what is learned. */
    private static final List<String> CODE = List.of("intake", "rulebook", "plain");

    private Schooling() {}

    /** @param arguments the folder of the classes that were built */
    public static void main(String[] arguments) throws IOException {
        teach(RuleFiles.SHIPPED, Path.of(arguments[0]));
    }

    /** A rule book that has mistakes is not learned from: whoever reads by it is told of them. */
    static void teach(RuleFiles files, Path classes) throws IOException {
        Path folder = classes.resolve(Schooling.class.getPackageName().replace('.', '/'));
        Optional<String> digest = files.digest();
        Optional<RuleBook> rules = files.read().ruleBook();
        if (digest.isEmpty() || rules.isEmpty()) {
            return;
        }
        String learner = learner(classes);
        Set<String> languages = rules.get().languages().keySet();
        Store store = new Store(name -> bytes(folder.resolve(name)));
        if (store.find(
                        languages,
                        o -> o.rules().equals(digest.get()) && o.learner().equals(learner))
                .isPresent()) {
            return;
        }
        WholeReading whole = files.readWhole();
        if (whole.reading().ruleBook().isPresent()) {
            String lessons = Learned.digest(rules.get(), whole.examples());
            Learned learned = store.find(
                            languages,
                            o -> o.lessons().equals(lessons) && o.learner().equals(learner))
                    .orElseGet(() -> Learned.from(rules.get(), whole.examples()));
            Store.Origin origin = new Store.Origin(digest.get(), lessons, learner);
            Files.createDirectories(folder);
            for (Map.Entry<String, byte[]> packed : learned.packed().entrySet()) {
                Path file = folder.resolve(Store.name(packed.getKey()));
                Path fresh = folder.resolve(Store.name(packed.getKey()) + ".new");
                Files.write(fresh, Store.file(origin, packed.getValue()));
                Files.move(fresh, file, StandardCopyOption.REPLACE_EXISTING);
            }
        }
    }

    private static Optional<byte[]> bytes(Path file) {
        try {
            return Optional.of(Files.readAllBytes(file));
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    /** Other code may learn something else from the same rule book. */
    private static String learner(Path classes) throws IOException {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            digest.update(Version.LATEST.toString().getBytes(StandardCharsets.UTF_8));
            for (String room : CODE) {
                for (Path file : classFiles(classes.resolve("hingewise").resolve(room))) {
                    digest.update(Files.readAllBytes(file));
                }
            }
            return HexFormat.of().formatHex(digest.digest());
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    private static List<Path> classFiles(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(f -> f.toString().endsWith(".class")).sorted().toList();
        }
    }
}
