package hingewise.intake;

import hingewise.intake.Clauses.Sentence;
import hingewise.rulebook.Language;
import hingewise.rulebook.Phrases;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Reads texts of one language. Not for several threads at once. */
final class LanguageReader {
    private final Language language;
    private final Lexicon lexicon;
    private final Roles roles;
    private final Clauses clauses;
    private final Map<Integer, List<Rule>> byHead = new HashMap<>();
    private final SentenceReader sentences;
    private final Map<String, Set<String>> kin;
    /** Observations that are about the past. */
    private final Set<String> past = new HashSet<>();

    private final Features features;

    /** @param kin for each hint, the observations that follow from it */
    LanguageReader(Language language, Map<String, Phrases> phrases, Map<String, Set<String>> kin) {
        this.language = language;
        this.lexicon = new Lexicon(
                language,
                phrases.values().stream()
                        .flatMap(p -> said(p).stream())
                        .flatMap(s -> Stream.concat(s.yes().stream(), s.no().stream()))
                        .toList());
        this.roles = Roles.of(lexicon, language);
        this.clauses = new Clauses(lexicon, roles);
        BitSet heads = new BitSet();
        phrases.forEach((id, p) -> {
            said(p).stream().flatMap(s -> Rule.of(id, p, s, lexicon, roles)).forEach(rule -> {
                rule.head().any().stream()
                        .forEach(n -> byHead.computeIfAbsent(n, k -> new ArrayList<>())
                                .add(rule));
                heads.or(rule.head().any());
            });
        });
        this.sentences = new SentenceReader(roles, heads, byHead);
        this.kin = kin;
        BitSet telling = (BitSet) roles.topics().clone();
        lexicon.named(heads).forEach(telling::set);
        this.features = new Features(lexicon, roles, telling);
        phrases.forEach((id, p) -> {
            if (p.past()) {
                past.add(id);
            }
        });
    }

    private Hearer hearer(Classifier classifier) {
        return new Hearer(features, classifier, kin, past);
    }

    /** What stands in a sentence that a classifier can learn from. */
    Set<String> features(String sentence) {
        return features.of(words(sentence));
    }

    private List<Phrases.Said> said(Phrases phrases) {
        Phrases.Said said = phrases.byLanguage().get(language.id());
        return said == null ? List.of() : List.of(said);
    }

    /**
     * How much a text looks like this language: words that it has a use for count once, its frequent small words once
     * more.
     */
    long familiar(String text) {
        return words(text).stream()
                .mapToLong(w -> (lexicon.knows(w) ? 1 : 0) + (language.common().contains(w.surface()) ? 1 : 0))
                .sum();
    }

    List<Word> words(String text) {
        return lexicon.words(text);
    }

    /** What the first words answer by themselves. */
    Optional<Replies.Reply> reply(String text) {
        return sentencesOf(text).stream()
                .findFirst()
                .map(s -> sentences.replies().begins(s.clauses().get(0)))
                .filter(r -> r != Replies.Reply.NONE);
    }

    /** The first clause, without a letter that announces it, such as "A:" before an answer. */
    private static Clause opening(Sentence sentence) {
        List<Clause> all = sentence.clauses();
        boolean announced =
                all.size() > 1 && all.get(0).size() == 1 && all.get(1).before() == Word.Gap.COLON;
        return all.get(announced ? 1 : 0);
    }

    /** Whether it is but a letter that announces an answer, as in "Q. Does it ring? A. It does." */
    private static boolean isLetter(Sentence sentence) {
        Clause only = sentence.clauses().get(0);
        return sentence.clauses().size() == 1
                && only.size() == 1
                && only.sentence().get(only.from()).surface().length() == 1;
    }

    /** How likely the words are to speak of an observation. */
    double chance(List<Word> words, String observation, Classifier classifier) {
        return hearer(classifier).chance(words, observation);
    }

    List<ListingReader.Stretch> sentences(String text) {
        return sentencesOf(text).stream()
                .map(Sentence::words)
                .map(w -> new ListingReader.Stretch(
                        w.get(0).start(), w.get(w.size() - 1).end(), w))
                .toList();
    }

    private List<Sentence> sentencesOf(String text) {
        List<Word> words = words(text);
        boolean asks = !words.isEmpty()
                && text.indexOf('?', words.get(words.size() - 1).end()) >= 0;
        return clauses.of(words, asks ? Word.Gap.QUESTION : Word.Gap.STOP);
    }

    /**
     * All that is found, in the order of the text.
     *
     * @param classifier that has learned this language
     */
    List<Found> read(String text, Classifier classifier) {
        List<Found> found = new ArrayList<>();
        List<Sentence> all = sentencesOf(text);
        if (!all.isEmpty() && all.get(0).clauses().get(0).has(roles.wanted())) {
            return found;
        }
        Hearer hearer = hearer(classifier);
        SentenceReader.Read earlier = SentenceReader.Read.NOTHING;
        for (int i = 0; i < all.size(); i++) {
            Optional<Clause> next = all.stream()
                    .skip(i + 1L)
                    .filter(s -> !isLetter(s))
                    .findFirst()
                    .map(LanguageReader::opening);
            earlier = sentences.read(all.get(i), next, earlier);
            found.addAll(hearer.weighed(all.get(i), earlier));
        }
        return found;
    }
}
