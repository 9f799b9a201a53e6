package hingewise.intake;

import hingewise.rulebook.Language;
import hingewise.rulebook.Moment;
import hingewise.rulebook.Phrases;
import hingewise.rulebook.RuleBook;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The languages of a rule book, each with its reader. Not for several threads at once. */
final class Languages {
    private final Map<String, LanguageReader> readers = new LinkedHashMap<>();
    private final Map<String, Phrases> phrases = new LinkedHashMap<>();

    Languages(RuleBook rules) {
        rules.hints().values().forEach(h -> phrases.put(h.id(), h.phrases()));
        rules.observations().values().stream()
                .filter(o -> o.moments().contains(Moment.LISTING))
                .forEach(o -> phrases.put(o.id(), o.phrases()));
        Map<String, Set<String>> kin = new HashMap<>();
        phrases.forEach((id, p) -> p.conclusions().stream()
                .flatMap(c -> c.when().keySet().stream())
                .filter(rules.hints()::containsKey)
                .forEach(h -> kin.computeIfAbsent(h, k -> new HashSet<>()).add(id)));
        for (Language language : rules.languages().values()) {
            readers.put(language.id(), new LanguageReader(language, phrases, kin));
        }
    }

    /** By language, in the order of the rule book. */
    Map<String, LanguageReader> readers() {
        return readers;
    }

    /** By hint or observation that a text may speak of. */
    Map<String, Phrases> phrases() {
        return phrases;
    }

    Optional<LanguageReader> reader(String language) {
        return Optional.ofNullable(readers.get(language));
    }

    /** The language that most of a text's small words belong to; empty when the rule book knows none. */
    String of(String text) {
        String language = "";
        long most = -1;
        for (Map.Entry<String, LanguageReader> r : readers.entrySet()) {
            long familiar = r.getValue().familiar(text);
            if (familiar > most) {
                most = familiar;
                language = r.getKey();
            }
        }
        return language;
    }
}
