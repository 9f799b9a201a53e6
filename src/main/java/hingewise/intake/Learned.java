package hingewise.intake;

import hingewise.rulebook.Examples;
import hingewise.rulebook.Language;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;

/**
 * What the examples of a language teach, learned when it is first asked for: that takes a few seconds. All readers of a
 * language share it, in any number of threads.
 */
final class Learned {
    private static final String YES = "=yes";
    private static final String NO = "=no";
    /** Any would do; it is kept so that the same rule book reads alike every time. */
    private static final long SEED = 1;

    private Optional<Classifier> classifier = Optional.empty();

    /** A claim by its name: the observation and the answer. */
    record Claim(String about, boolean yes) {
        String name() {
            return about + (yes ? YES : NO);
        }

        static Claim named(String name) {
            return new Claim(name.substring(0, name.lastIndexOf('=')), name.endsWith(YES));
        }
    }

    /** @param features of a sentence, the same for every reader of the language */
    synchronized Classifier classifier(Language language, Function<String, Set<String>> features) {
        if (classifier.isEmpty()) {
            classifier = Optional.of(Classifier.taught(
                    claims(language).entrySet().stream()
                            .map(c -> new Classifier.Example(features.apply(c.getKey()), c.getValue())),
                    SEED));
        }
        return classifier.get();
    }

    /** The claims of each sentence; one that stands under several observations makes them all. */
    private static Map<String, Set<String>> claims(Language language) {
        Map<String, Set<String>> claims = new LinkedHashMap<>();
        for (Examples e : language.examples()) {
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
}
