package hingewise.intake;

import hingewise.rulebook.Language;
import hingewise.rulebook.Moment;
import hingewise.rulebook.Phrases;
import hingewise.rulebook.RuleBook;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Reads what a listing claims, by the phrases of a rule book. What is unclear is left alone: a text that says both yes
 * and no to one question suggests nothing. Not for several threads at once: each takes its own.
 */
public final class ListingReader {
    private final Map<String, LanguageReader> readers = new LinkedHashMap<>();
    private final Map<String, Phrases> phrases = new LinkedHashMap<>();
    private final RuleBook rules;

    /** @param rules whose observations of the listing moment are looked for */
    public ListingReader(RuleBook rules) {
        this.rules = rules;
        rules.hints().values().forEach(h -> phrases.put(h.id(), h.phrases()));
        rules.observations().values().stream()
                .filter(o -> o.moments().contains(Moment.LISTING))
                .forEach(o -> phrases.put(o.id(), o.phrases()));
        for (Language language : rules.languages().values()) {
            readers.put(language.id(), new LanguageReader(language, phrases));
        }
    }

    /**
     * What a text was found to say.
     *
     * @param language id of the language it was read in; empty when the rule book knows none
     * @param suggestions in the order of the text, one for each observation
     */
    public record Read(String language, List<Suggestion> suggestions) {
        public Read {
            suggestions = List.copyOf(suggestions);
        }
    }

    /** Reads a text in the language that most of its small words belong to. */
    public Read read(String text) {
        String language = "";
        long most = -1;
        List<Word> best = List.of();
        for (Map.Entry<String, LanguageReader> r : readers.entrySet()) {
            List<Word> words = r.getValue().words(text);
            long familiar = r.getValue().familiar(words);
            if (familiar > most) {
                most = familiar;
                language = r.getKey();
                best = words;
            }
        }
        LanguageReader reader = readers.get(language);
        return new Read(language, reader == null ? List.of() : suggestions(text, reader.read(best)));
    }

    /**
     * Reads a text in a language that is known.
     *
     * @throws IllegalArgumentException if the rule book does not know it
     */
    public Read readIn(String language, String text) {
        LanguageReader reader = readers.get(language);
        if (reader == null) {
            throw new IllegalArgumentException("no language \"" + language + "\"");
        }
        return new Read(language, suggestions(text, reader.read(reader.words(text))));
    }

    /** What the first words of a text answer by themselves in this language; empty when nothing. */
    Optional<Replies.Reply> reply(String language, String text) {
        return Optional.ofNullable(readers.get(language)).flatMap(r -> r.reply(text));
    }

    private List<Suggestion> suggestions(String text, List<Found> found) {
        Map<String, List<Found>> byId = new LinkedHashMap<>();
        found.forEach(
                f -> byId.computeIfAbsent(f.about(), o -> new ArrayList<>()).add(f));
        Map<String, Found> clear = new LinkedHashMap<>();
        byId.forEach((id, all) -> clearest(all).ifPresent(f -> clear.put(id, f)));
        while (conclude(byId.keySet(), clear)) {}
        return clear.values().stream()
                .filter(f -> rules.observations().containsKey(f.about()))
                .sorted(Comparator.comparingInt(Found::start).thenComparing(Found::about))
                .map(f -> new Suggestion(
                        f.about(), f.yes(), f.certainty(), text.substring(f.start(), f.end()), f.start(), f.end()))
                .toList();
    }

    /**
     * Adds what follows; on what the text itself spoke of, clearly or not, nothing follows.
     *
     * @return whether anything was added
     */
    private boolean conclude(Set<String> spokenOf, Map<String, Found> clear) {
        boolean added = false;
        for (Map.Entry<String, Phrases> p : phrases.entrySet()) {
            if (!spokenOf.contains(p.getKey()) && !clear.containsKey(p.getKey())) {
                List<Found> all = p.getValue().conclusions().stream()
                        .flatMap(c -> follows(p.getKey(), c, clear).stream())
                        .toList();
                Optional<Found> clearest = clearest(all);
                clearest.ifPresent(f -> clear.put(p.getKey(), f));
                added |= clearest.isPresent();
            }
        }
        return added;
    }

    /** The answer that follows, resting on the words of the first answer it follows from. */
    private static Optional<Found> follows(String id, Phrases.Conclusion conclusion, Map<String, Found> clear) {
        List<Found> from = new ArrayList<>();
        for (Map.Entry<String, Boolean> w : conclusion.when().entrySet()) {
            Found f = clear.get(w.getKey());
            if (f == null || f.yes() != w.getValue()) {
                return Optional.empty();
            }
            from.add(f);
        }
        double certainty = from.stream().mapToDouble(Found::certainty).min().orElseThrow();
        Found first = from.get(0);
        return Optional.of(new Found(id, conclusion.yes(), certainty, from.size(), first.start(), first.end()));
    }

    /** The firmest of those that agree; nothing when as good ones disagree. */
    private static Optional<Found> clearest(List<Found> found) {
        Comparator<Found> better = Comparator.comparingInt(Found::terms).thenComparingDouble(Found::certainty);
        Optional<Found> yes = found.stream().filter(Found::yes).max(better);
        Optional<Found> no = found.stream().filter(f -> !f.yes()).max(better);
        if (yes.isEmpty() || no.isEmpty()) {
            return yes.or(() -> no);
        }
        int order = better.compare(yes.get(), no.get());
        return order == 0 ? Optional.empty() : order > 0 ? yes : no;
    }
}
