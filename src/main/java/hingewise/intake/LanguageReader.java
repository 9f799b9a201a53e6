package hingewise.intake;

import hingewise.intake.Clauses.Sentence;
import hingewise.rulebook.Examples;
import hingewise.rulebook.Language;
import hingewise.rulebook.Phrases;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/** Reads texts of one language. Not for several threads at once. */
final class LanguageReader {
    /** So many words behind a denial are told apart from the same words without one. */
    private static final int DENIED = 3;

    /** From this length on a word is likely to be made of several. */
    private static final int COMPOUND = 9;
    /** So many letters tell which words a long one is made of. */
    private static final int END = 5;

    private static final String YES = "=yes";
    private static final String NO = "=no";

    private final Language language;
    private final Lexicon lexicon;
    private final Roles roles;
    private final Clauses clauses;
    private final Map<Integer, List<Rule>> byHead = new HashMap<>();
    private final SentenceReader sentences;
    private final Map<String, Set<String>> kin;
    private final BitSet telling = new BitSet();
    private final Likeness likeness;
    private final Likeness answers;

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
        lexicon.named(heads).forEach(telling::set);
        telling.or(roles.topics());
        Map<String, List<Set<String>>> of = new LinkedHashMap<>();
        Map<String, List<Set<String>>> answers = new LinkedHashMap<>();
        for (Examples e : language.examples()) {
            e.sentences().forEach((o, a) -> {
                add(of, o, a.yes());
                add(of, o, a.no());
                add(answers, o + YES, a.yes());
                add(answers, o + NO, a.no());
            });
            add(of, "", e.silent());
        }
        this.likeness = new Likeness(of);
        this.answers = new Likeness(answers);
    }

    private List<Phrases.Said> said(Phrases phrases) {
        Phrases.Said said = phrases.byLanguage().get(language.id());
        return said == null ? List.of() : List.of(said);
    }

    /**
     * How much the words look like this language: those that it has a use for count once, its frequent small words once
     * more.
     */
    long familiar(List<Word> words) {
        return words.stream()
                .mapToLong(w -> (lexicon.knows(w) ? 1 : 0) + (language.common().contains(w.surface()) ? 1 : 0))
                .sum();
    }

    List<Word> words(String text) {
        return lexicon.words(text);
    }

    /** What the first words answer by themselves. */
    Optional<Replies.Reply> reply(String text) {
        return clauses.of(words(text)).stream()
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

    /** The stems of the words, both ends of long ones, what is denied, and the word sets that tell something. */
    Set<String> tokens(List<Word> words) {
        Set<String> tokens = new TreeSet<>();
        for (Word w : words) {
            tokens.add(w.stem());
            int length = w.surface().length();
            if (length >= COMPOUND) {
                tokens.add(w.surface().substring(0, END) + "*");
                tokens.add("*" + w.surface().substring(length - END));
            }
        }
        for (Mention m : lexicon.mentions(words, 0, words.size())) {
            m.sets().stream().filter(telling::get).forEach(n -> tokens.add("@" + n));
            if (m.isIn(roles.not()) || m.isIn(roles.notAny()) || m.isIn(roles.notAfter())) {
                tokens.add("!");
                words.subList(m.to(), Math.min(words.size(), m.to() + DENIED)).forEach(w -> tokens.add("!" + w.stem()));
            }
        }
        return tokens;
    }

    private void add(Map<String, List<Set<String>>> examples, String kind, List<String> sentences) {
        sentences.forEach(
                t -> examples.computeIfAbsent(kind, k -> new ArrayList<>()).add(tokens(words(t))));
    }

    double like(List<Word> words, String observation) {
        return likeness.of(tokens(words)).getOrDefault(observation, -99.0);
    }

    List<ListingReader.Stretch> sentences(String text) {
        return clauses.of(words(text)).stream()
                .map(Sentence::words)
                .map(w -> new ListingReader.Stretch(
                        w.get(0).start(), w.get(w.size() - 1).end(), w))
                .toList();
    }

    private static double lean(Map<String, Double> answers, String observation) {
        return answers.getOrDefault(observation + YES, 0.0) - answers.getOrDefault(observation + NO, 0.0);
    }

    /** Words that a claim stands among, and what they are like. */
    private final class Context {
        private final List<Word> words;
        private final Map<String, Double> like;
        private final Map<String, Double> answer;

        Context(List<Word> words) {
            this.words = words;
            Set<String> tokens = tokens(words);
            this.like = likeness.of(tokens);
            this.answer = answers.of(tokens);
        }

        /** How many observations the words are liker to. */
        int rank(Set<String> own) {
            OptionalDouble mine = own.stream()
                    .filter(like::containsKey)
                    .mapToDouble(like::get)
                    .max();
            return mine.isEmpty()
                    ? like.size() / 2
                    : (int) like.values().stream()
                            .filter(s -> s > mine.getAsDouble())
                            .count();
        }
    }

    /** The clause that a claim stands in, if it is one. */
    private static Optional<Context> holding(List<Context> clauses, Found found) {
        return clauses.stream()
                .filter(c -> c.words.get(0).start() <= found.start()
                        && found.end() <= c.words.get(c.words.size() - 1).end())
                .findFirst();
    }

    private Found ranked(Found found, Context sentence, Context clause) {
        Set<String> own = kin.getOrDefault(found.about(), Set.of(found.about()));
        int rank = (int) Math.sqrt((1.0 + sentence.rank(own)) * (1 + clause.rank(own))) - 1;
        int sign = found.yes() ? 1 : -1;
        double lean = Math.max(sign * lean(sentence.answer, found.about()), sign * lean(clause.answer, found.about()));
        return found.ranked(rank, lean);
    }

    /** All that is found, in the order of the text. */
    List<Found> read(List<Word> words) {
        List<Found> found = new ArrayList<>();
        List<Sentence> all = clauses.of(words);
        if (!all.isEmpty() && all.get(0).clauses().get(0).has(roles.wanted())) {
            return found;
        }
        SentenceReader.Read earlier = SentenceReader.Read.NOTHING;
        for (int i = 0; i < all.size(); i++) {
            Optional<Clause> next = all.stream()
                    .skip(i + 1L)
                    .filter(s -> !isLetter(s))
                    .findFirst()
                    .map(LanguageReader::opening);
            earlier = sentences.read(all.get(i), next, earlier);
            if (!earlier.found().isEmpty()) {
                Context sentence = new Context(all.get(i).words());
                List<Context> clause = all.get(i).clauses().stream()
                        .map(c -> new Context(c.sentence().subList(c.from(), c.to())))
                        .toList();
                earlier.found()
                        .forEach(f ->
                                found.add(ranked(f, sentence, holding(clause, f).orElse(sentence))));
            }
        }
        return found;
    }
}
