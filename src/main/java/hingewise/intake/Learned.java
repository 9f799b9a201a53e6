package hingewise.intake;

import hingewise.rulebook.Examples;
import hingewise.rulebook.RuleBook;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;

/** What the examples of a rule book teach: for each language how likely words are to make each claim. */
public final class Learned {
    /** Changes whenever something else is learned from the same rule book, or is kept otherwise. */
    public static final String KIND = "logistic regressions 1";

    private static final String YES = "=yes";
    private static final String NO = "=no";
    /** Any would do; it is kept so that the same rule book reads alike every time. */
    private static final long SEED = 1;

    private final Map<String, Classifier> classifiers;

    private Learned(Map<String, Classifier> classifiers) {
        this.classifiers = Map.copyOf(classifiers);
    }

    /** A claim by its name: the observation and the answer. */
    record Claim(String about, boolean yes) {
        String name() {
            return about + (yes ? YES : NO);
        }

        static Claim named(String name) {
            return new Claim(name.substring(0, name.lastIndexOf('=')), name.endsWith(YES));
        }
    }

    /** Learns from examples, which takes a few seconds. The same rule book and examples teach the same. */
    public static Learned from(RuleBook rules, List<Examples> examples) {
        Map<String, Classifier> classifiers = new LinkedHashMap<>();
        new Languages(rules).readers().forEach((language, reader) -> {
            List<Examples> own =
                    examples.stream().filter(e -> e.language().equals(language)).toList();
            classifiers.put(
                    language,
                    Classifier.taught(
                            claims(own).entrySet().stream()
                                    .map(c -> new Classifier.Example(reader.features(c.getKey()), c.getValue())),
                            SEED));
        });
        return new Learned(classifiers);
    }

    /** The claims of each sentence; one that stands under several observations makes them all. */
    private static Map<String, Set<String>> claims(List<Examples> examples) {
        Map<String, Set<String>> claims = new LinkedHashMap<>();
        for (Examples e : examples) {
            e.sentences().forEach((observation, answers) -> {
                answers.yes().forEach(s -> add(claims, s, new Claim(observation, true)));
                answers.no().forEach(s -> add(claims, s, new Claim(observation, false)));
            });
            e.silent().forEach(s -> claims.computeIfAbsent(s, k -> new TreeSet<>()));
        }
        return claims;
    }

    private static void add(Map<String, Set<String>> claims, String sentence, Claim claim) {
        claims.computeIfAbsent(sentence, k -> new TreeSet<>()).add(claim.name());
    }

    Classifier classifier(String language) {
        return Objects.requireNonNull(classifiers.get(language), language);
    }

    /** By language, in a form to be kept. */
    public Map<String, byte[]> packed() throws IOException {
        Map<String, byte[]> packed = new LinkedHashMap<>();
        for (Map.Entry<String, Classifier> c : classifiers.entrySet()) {
            Packer packer = new Packer();
            c.getValue().pack(packer);
            packed.put(c.getKey(), packer.packed());
        }
        return packed;
    }

    /**
     * The same that was {@link #packed}, to the last bit.
     *
     * @throws RuntimeException if it was not packed by the same {@link #KIND}
     */
    public static Learned unpacked(Map<String, byte[]> packed) {
        Map<String, Classifier> classifiers = new LinkedHashMap<>();
        packed.forEach((language, bytes) -> classifiers.put(language, Classifier.unpacked(new Unpacker(bytes))));
        return new Learned(classifiers);
    }
}
