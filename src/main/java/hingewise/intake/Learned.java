package hingewise.intake;

import hingewise.rulebook.Examples;
import hingewise.rulebook.RuleBook;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/** What the examples of a rule book teach: for each language how likely words are to make each claim. */
public final class Learned {
    /** Changes whenever something else is learned from the same rule book, or is kept otherwise. */
    public static final String KIND = "networks 1";

    private static final String YES = "=yes";
    private static final String NO = "=no";
    /** Any would do; it is kept so that the same rule book reads alike every time. */
    private static final long SEED = 1;
    /** So many of the sentences are learned joined to another as well. */
    private static final double JOINED = .3;

    /** Of so many the one most like it is joined to a sentence. */
    private static final int CHOICE = 20;

    private static final List<String> JOINTS = List.of(", ", "; ", ". ");

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

    /** Learns from examples, which takes half a minute or more. The same lessons teach the same. */
    public static Learned from(RuleBook rules, List<Examples> examples) {
        Map<String, Classifier> classifiers = new LinkedHashMap<>();
        new Languages(rules)
                .readers()
                .forEach((language, reader) ->
                        classifiers.put(language, Classifier.taught(lessons(language, reader, examples), SEED)));
        return new Learned(classifiers);
    }

    /** A digest of all that is learned from: another rule book may hold the same lessons. */
    public static String digest(RuleBook rules, List<Examples> examples) {
        MessageDigest digest = sha256();
        new Languages(rules).readers().forEach((language, reader) -> {
            digest.update(language.getBytes(StandardCharsets.UTF_8));
            lessons(language, reader, examples)
                    .forEach(e -> digest.update(
                            (String.join("\n", e.features()) + "\n\n" + String.join("\n", e.claims()) + "\n\n\n")
                                    .getBytes(StandardCharsets.UTF_8)));
        });
        return HexFormat.of().formatHex(digest.digest());
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    private static Stream<Classifier.Example> lessons(String language, LanguageReader reader, List<Examples> examples) {
        List<Examples> own =
                examples.stream().filter(e -> e.language().equals(language)).toList();
        return together(claims(own)).entrySet().stream()
                .map(c -> new Classifier.Example(reader.features(c.getKey()), c.getValue()));
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

    /**
     * With some sentences joined to others: what two sentences claim they claim together. They are joined to those that are
     * most like them, so that it is learned what is said of which part.
     */
    private static Map<String, Set<String>> together(Map<String, Set<String>> claims) {
        Map<String, Set<String>> together = new LinkedHashMap<>(claims);
        List<String> sentences = new ArrayList<>(claims.keySet());
        Random random = new Random(SEED);
        for (int n = 0; n < JOINED * sentences.size(); n++) {
            String one = sentences.get(random.nextInt(sentences.size()));
            Set<String> words = words(one);
            String other = random.ints(CHOICE, 0, sentences.size())
                    .mapToObj(sentences::get)
                    .max(Comparator.comparingDouble(s -> likeness(words, words(s))))
                    .orElseThrow();
            Set<String> both = new TreeSet<>(Objects.requireNonNull(claims.get(one)));
            both.addAll(Objects.requireNonNull(claims.get(other)));
            together.put(one + JOINTS.get(random.nextInt(JOINTS.size())) + other, both);
        }
        return together;
    }

    private static Set<String> words(String sentence) {
        return new HashSet<>(List.of(sentence.toLowerCase(Locale.ROOT).split("\\W+")));
    }

    /** The share of words that are in both (Jaccard's index). */
    private static double likeness(Set<String> one, Set<String> other) {
        long both = one.stream().filter(other::contains).count();
        return both / (double) (one.size() + other.size() - both);
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
