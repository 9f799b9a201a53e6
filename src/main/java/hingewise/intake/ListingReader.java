package hingewise.intake;

import hingewise.rulebook.Phrases;
import hingewise.rulebook.RuleBook;
import hingewise.rulebook.Trust;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * Reads what a listing claims, by the phrases of a rule book. What is unclear is left alone: a text that says both yes
 * and no to one question suggests nothing. Not for several threads at once: each takes its own.
 */
public final class ListingReader {
    private static final Comparator<Found> FIRMER =
            Comparator.comparingInt(Found::terms).thenComparingDouble(Found::certainty);
    /** Of words that are as firm, those are quoted that make the claim likeliest, and of these the fewest. */
    private static final Comparator<Found> TELLING = FIRMER.thenComparingLong(
                    f -> Math.round(logOdds(f.evidence().chance())))
            .thenComparingInt(f -> f.start() - f.end());

    private final Languages languages;
    private final RuleBook rules;
    private final Learned learned;

    /**
     * @param rules whose observations of the listing moment are looked for
     * @param learned from the examples of the same rule book
     */
    public ListingReader(RuleBook rules, Learned learned) {
        this.rules = rules;
        this.learned = learned;
        this.languages = new Languages(rules);
    }

    /** A reader for another thread, which shares with this one what the examples have taught it. */
    public ListingReader another() {
        return new ListingReader(rules, learned);
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

    /** @param trust how far it is to be trusted, in 0–1 */
    private record Claim(Found found, double trust) {}

    /** Reads a text in the language that most of its small words belong to. */
    public Read read(String text) {
        String language = languages.of(text);
        return language.isEmpty() ? new Read(language, List.of()) : readIn(language, text);
    }

    /**
     * Reads a text in a language that is known.
     *
     * @throws IllegalArgumentException if the rule book does not know it
     */
    public Read readIn(String language, String text) {
        if (languages.reader(language).isEmpty()) {
            throw new IllegalArgumentException("no language \"" + language + "\"");
        }
        return new Read(language, suggestions(language, text, found(language, text)));
    }

    /** What the first words of a text answer by themselves in this language; empty when nothing. */
    Optional<Replies.Reply> reply(String language, String text) {
        return languages.reader(language).flatMap(r -> r.reply(text));
    }

    /** Everything that phrases claim in a text, whether it is suggested or not. */
    List<Found> found(String language, String text) {
        return languages.reader(language).orElseThrow().read(text, learned.classifier(language));
    }

    /** A sentence of a text, by offsets in UTF-16 units. */
    record Stretch(int start, int end, List<Word> words) {}

    List<Stretch> sentences(String language, String text) {
        return languages.reader(language).orElseThrow().sentences(text);
    }

    Optional<Stretch> likest(String language, List<Stretch> sentences, String observation) {
        LanguageReader reader = languages.reader(language).orElseThrow();
        Classifier classifier = learned.classifier(language);
        return sentences.stream()
                .max(Comparator.comparingDouble(s -> reader.chance(s.words(), observation, classifier)));
    }

    private List<Suggestion> suggestions(String language, String text, List<Found> found) {
        Optional<Trust> trust =
                Objects.requireNonNull(rules.languages().get(language)).trust();
        double least = trust.map(Trust::least).orElse(0.0);
        Map<String, List<Found>> byId = new LinkedHashMap<>();
        found.stream()
                .filter(f -> trust.isPresent() || f.evidence().byPhrase())
                .forEach(f ->
                        byId.computeIfAbsent(f.about(), o -> new ArrayList<>()).add(f));
        Map<String, Claim> clear = new LinkedHashMap<>();
        byId.forEach((id, all) -> clearest(all, trust).ifPresent(c -> clear.put(id, c)));
        clear.values().removeIf(c -> !c.found().evidence().byPhrase() && c.trust() < least);
        leaveUnsaid(clear);
        Set<String> spokenOf = new HashSet<>(clear.keySet());
        found.stream().filter(f -> f.evidence().byPhrase()).forEach(f -> spokenOf.add(f.about()));
        while (conclude(spokenOf, clear)) {}
        return clear.values().stream()
                .filter(c -> c.trust() >= least)
                .map(Claim::found)
                .filter(f -> rules.observations().containsKey(f.about()))
                .sorted(Comparator.comparingInt(Found::start).thenComparing(Found::about))
                .map(f -> new Suggestion(
                        f.about(), f.yes(), f.certainty(), text.substring(f.start(), f.end()), f.start(), f.end()))
                .toList();
    }

    /** Takes out what another answer says already. */
    private void leaveUnsaid(Map<String, Claim> clear) {
        List<String> unsaid = clear.values().stream()
                .map(Claim::found)
                .filter(f -> Objects.requireNonNull(languages.phrases().get(f.about())).within().stream()
                        .anyMatch(w -> w.yes() == f.yes()
                                && follows(f.about(), w, clear).isPresent()))
                .map(Found::about)
                .toList();
        unsaid.forEach(clear::remove);
    }

    /**
     * Adds what follows; on what the text itself spoke of, clearly or not, nothing follows.
     *
     * @return whether anything was added
     */
    private boolean conclude(Set<String> spokenOf, Map<String, Claim> clear) {
        boolean added = false;
        for (Map.Entry<String, Phrases> p : languages.phrases().entrySet()) {
            if (!spokenOf.contains(p.getKey()) && !clear.containsKey(p.getKey())) {
                Optional<Claim> clearest = firmest(p.getValue().conclusions().stream()
                        .flatMap(c -> follows(p.getKey(), c, clear).stream())
                        .toList());
                clearest.ifPresent(c -> clear.put(p.getKey(), c));
                added |= clearest.isPresent();
            }
        }
        return added;
    }

    /** The answer that follows, resting on the words of the first answer it follows from. */
    private static Optional<Claim> follows(String id, Phrases.Conclusion conclusion, Map<String, Claim> clear) {
        List<Claim> from = new ArrayList<>();
        for (Map.Entry<String, Boolean> w : conclusion.when().entrySet()) {
            Claim c = clear.get(w.getKey());
            if (c == null || c.found().yes() != w.getValue()) {
                return Optional.empty();
            }
            from.add(c);
        }
        double certainty =
                from.stream().mapToDouble(c -> c.found().certainty()).min().orElseThrow();
        double trust = from.stream().mapToDouble(Claim::trust).min().orElseThrow();
        Found first = from.get(0).found();
        return Optional.of(new Claim(
                new Found(id, conclusion.yes(), certainty, from.size(), first.start(), first.end(), first.evidence()),
                trust));
    }

    /** Of those that agree the firmest stands for all; nothing when as good ones disagree. */
    private Optional<Claim> clearest(List<Found> found, Optional<Trust> trust) {
        List<Claim> sides = new ArrayList<>();
        for (boolean yes : new boolean[] {true, false}) {
            List<Found> agreeing = found.stream().filter(f -> f.yes() == yes).toList();
            List<Found> opposing = found.stream().filter(f -> f.yes() != yes).toList();
            agreeing.stream().max(TELLING).ifPresent(f -> sides.add(new Claim(f, trust(agreeing, opposing, trust))));
        }
        return firmest(sides);
    }

    /**
     * What only hints at an answer is in no example, since it settles nothing by itself; nor is what other words turn or
     * answer. Both look less likely by the examples than they are, and are trusted as if only two in a row were as
     * doubtful.
     */
    private double trust(List<Found> agreeing, List<Found> opposing, Optional<Trust> trust) {
        double trusted = trust.map(t -> t.of(Marks.of(agreeing, opposing))).orElse(1.0);
        boolean hint = rules.hints().containsKey(agreeing.get(0).about());
        return hint || agreeing.stream().anyMatch(f -> f.evidence().turned()) ? Math.sqrt(trusted) : trusted;
    }

    /** The side that is trusted more; neither when phrases say the one as firmly as the other. */
    private static Optional<Claim> firmest(List<Claim> claims) {
        Comparator<Claim> trusted = Comparator.comparingDouble(Claim::trust).thenComparing(Claim::found, FIRMER);
        Optional<Claim> yes = claims.stream().filter(c -> c.found().yes()).max(trusted);
        Optional<Claim> no = claims.stream().filter(c -> !c.found().yes()).max(trusted);
        if (yes.isEmpty() || no.isEmpty()) {
            return yes.or(() -> no);
        }
        return contradict(yes.get().found(), no.get().found())
                ? Optional.empty()
                : trusted.compare(yes.get(), no.get()) > 0 ? yes : no;
    }

    private static boolean contradict(Found one, Found other) {
        return one.evidence().byPhrase() && other.evidence().byPhrase() && FIRMER.compare(one, other) == 0;
    }

    private static double logOdds(double chance) {
        return Math.log(chance / (1 - chance));
    }
}
