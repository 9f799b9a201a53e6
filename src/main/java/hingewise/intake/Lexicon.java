package hingewise.intake;

import hingewise.rulebook.Language;
import hingewise.rulebook.Phrase;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.IntStream;

/**
 * The word sets of a language, made fast to look up. An entry is one word or several in a row; {@code _} in it stands
 * for up to two words of any kind, {@code =word} is met only as written, {@code word*} and {@code *word} are met by
 * words that begin or end so.
 */
final class Lexicon {
    private static final int WIDEST_GAP = 2;
    private static final int MOST_SKIPPED = 2;
    private static final String SPARED = "spared";
    private static final String ARTICLES = "articles";
    private static final String BETWEEN = "between";
    private static final String NEGATED = "negated";
    private static final List<String> LIGHT = List.of("@light", "@only", "@of", "@fill", "@does");
    private static final List<String> DENIALS = List.of("@not", "@not-any", "@not-after");
    /** Sets that are not looked for in texts. */
    private static final Set<String> NOT_FOUND = Set.of(SPARED, ARTICLES, BETWEEN, NEGATED);

    private static final int REMEMBERED = 20_000;

    /** One step of an entry. */
    private static final class Node {
        private final Map<String, Node> next = new HashMap<>();
        private final BitSet sets = new BitSet();
        private boolean gap;
    }

    private final Words words;
    private final int named;
    private final BitSet denials = new BitSet();
    private final BitSet light = new BitSet();
    private final BitSet topics = new BitSet();
    private final Map<String, Integer> numbers = new LinkedHashMap<>();
    private final Node root = new Node();
    private final TreeMap<String, String> beginnings = new TreeMap<>();
    private final List<String> endings = new ArrayList<>();
    /** Words that stand or are missing within an entry, all the same. */
    private final Set<String> articles;
    /** Words that may stand within an entry, and these. */
    private final Set<String> between = new HashSet<>();

    /** Words that are taken for another one, with its stem. */
    private final Map<String, String> alike = new HashMap<>();

    private final TreeSet<String> known = new TreeSet<>();
    private final TreeSet<String> written = new TreeSet<>();
    private final Spelling spelling;
    private final Map<String, Keys> remembered = new LinkedHashMap<>(64, .75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Keys> eldest) {
            return size() > REMEMBERED;
        }
    };

    /** What a word is looked up by. */
    private record Keys(List<String> keys, boolean exact) {}

    /** @param phrases whose words become sets of their own */
    Lexicon(Language language, List<Phrase> phrases) {
        this.words = new Words(language.stemming());
        Map<String, List<String>> flat = new LinkedHashMap<>();
        language.sets().forEach((name, entries) -> {
            List<String> all = new ArrayList<>();
            for (String entry : entries) {
                if (entry.charAt(0) == Phrase.SET) {
                    all.addAll(flat.getOrDefault(entry.substring(1), List.of()));
                } else {
                    all.add(entry);
                }
            }
            flat.put(name, all);
        });
        this.articles = Set.copyOf(flat.getOrDefault(ARTICLES, List.of()));
        between.addAll(articles);
        between.addAll(flat.getOrDefault(BETWEEN, List.of()));
        List<String> negated = flat.getOrDefault(NEGATED, List.of());
        negated.forEach(w -> alike.put(w, words.of(negated.get(0)).get(0).stem()));
        flat.forEach((name, entries) ->
                entries.stream().filter(e -> !NOT_FOUND.contains(name)).forEach(e -> add(Phrase.SET + name, e)));
        this.named = numbers.size();
        DENIALS.stream().mapToInt(this::number).filter(n -> n >= 0).forEach(denials::set);
        LIGHT.stream().mapToInt(this::number).filter(n -> n >= 0).forEach(light::set);
        light.or(denials);
        language.topics().stream()
                .mapToInt(t -> number(Phrase.SET + t))
                .filter(n -> n >= 0)
                .forEach(topics::set);
        for (Phrase phrase : phrases) {
            phrase.terms().stream()
                    .flatMap(t -> t.any().stream())
                    .filter(a -> a.charAt(0) != Phrase.SET)
                    .forEach(a -> add(a, a));
        }
        TreeSet<String> spared = new TreeSet<>(language.common());
        flat.getOrDefault(SPARED, List.of()).forEach(spared::add);
        this.spelling = new Spelling(written, spared);
    }

    /** The number of a set, by {@code @name}, or of an alternative that is written out; -1 if nothing has it. */
    int number(String name) {
        return numbers.getOrDefault(name, -1);
    }

    /** Those of the numbers that are of word sets with a name. */
    IntStream named(BitSet numbers) {
        return numbers.stream().filter(n -> n < named);
    }

    /** Whether the word, as it stands, is one of an entry or a phrase. */
    boolean knows(Word word) {
        return known.contains(word.surface()) || known.contains(word.stem());
    }

    List<Word> words(String text) {
        return words.of(text);
    }

    private void add(String set, String entry) {
        int number = numbers.computeIfAbsent(set, s -> numbers.size());
        Node at = root;
        boolean gap = false;
        List<String> parts = List.of(entry.strip().split(" +"));
        for (int i = 0; i < parts.size(); i++) {
            String part = parts.get(i);
            if (part.equals("_")) {
                gap = true;
                continue;
            }
            if (0 < i && i < parts.size() - 1 && articles.contains(part)) {
                continue;
            }
            for (String key : keysOf(part)) {
                Node next = at.next.computeIfAbsent((gap ? "_" : "") + key, k -> new Node());
                at.gap |= gap;
                at = next;
                gap = false;
            }
        }
        if (at != root) {
            at.sets.set(number);
        }
    }

    private String stem(Word word) {
        return alike.getOrDefault(word.surface(), word.stem());
    }

    /** The keys of one part of an entry; several where the tokeniser divides it. */
    private List<String> keysOf(String part) {
        if (part.length() > 1 && part.endsWith("*")) {
            String beginning = part.substring(0, part.length() - 1);
            beginnings.put(beginning, part);
            return List.of(part);
        }
        if (part.length() > 1 && part.startsWith("*")) {
            endings.add(part.substring(1));
            return List.of(part);
        }
        boolean exact = part.length() > 1 && part.charAt(0) == '=';
        List<String> keys = new ArrayList<>();
        for (Word w : words.of(exact ? part.substring(1) : part)) {
            if (!exact) {
                known.add(w.surface());
                known.add(w.stem());
                written.add(w.surface());
            }
            keys.add(exact ? "=" + w.surface() : stem(w));
        }
        return keys;
    }

    /**
     * The mentions among words {@code from} to {@code to}. What lies within a longer entry of a word set is not met by
     * itself; what phrases write out hides nothing.
     */
    List<Mention> mentions(List<Word> sentence, int from, int to) {
        List<Mention> found = new ArrayList<>();
        for (int i = from; i < to; i++) {
            step(root, sentence, i, i, to, true, 0, found);
        }
        List<Mention> phrases =
                found.stream().filter(m -> m.size() > 1 && isNamed(m)).toList();
        List<Mention> denying = found.stream().filter(m -> m.isInAny(denials)).toList();
        BitSet lightWords = new BitSet();
        found.stream().filter(m -> m.size() == 1 && m.isInAny(light)).forEach(m -> lightWords.set(m.from()));
        Map<Integer, Mention> bySpan = new TreeMap<>();
        found.stream()
                .map(m -> left(m, phrases))
                .filter(m -> !m.sets().isEmpty())
                .map(m -> m.size() == 1
                        ? m
                        : m.told(
                                denying.stream().anyMatch(m::covers),
                                lightWords.nextClearBit(m.from()) >= m.to() && !isNamed(m)))
                .forEach(m -> bySpan.merge(m.from() * (sentence.size() + 1) + m.to(), m, Mention::joined));
        return List.copyOf(bySpan.values());
    }

    /** What is left of a mention within longer ones: words for the same part of a phone. */
    private Mention left(Mention m, List<Mention> longer) {
        BitSet left = (BitSet) m.sets().clone();
        boolean samePart = false;
        for (Mention o : longer) {
            if (o.covers(m)) {
                BitSet same = (BitSet) topics.clone();
                same.and(o.sets());
                same.and(m.sets());
                samePart = !same.isEmpty();
                left.andNot(topics);
                left.or(same);
                if (!samePart) {
                    return m.in(new BitSet());
                }
            }
        }
        return samePart ? m.in(left) : m;
    }

    private boolean isNamed(Mention m) {
        return m.sets().nextSetBit(0) < named;
    }

    private void step(
            Node at, List<Word> sentence, int start, int i, int to, boolean exact, int skipped, List<Mention> found) {
        if (!at.sets.isEmpty()) {
            found.add(new Mention(start, i, at.sets, false, false, exact));
        }
        for (int j = i; j < to; j++) {
            Word word = sentence.get(j);
            Keys keys = keys(word);
            for (String key : keys.keys) {
                Node next = at.next.get(key);
                if (next != null) {
                    step(next, sentence, start, j + 1, to, exact && keys.exact, skipped + j - i, found);
                }
            }
            boolean mayStandBetween = j > start && skipped + j - i < MOST_SKIPPED && between.contains(word.surface());
            if (at.next.isEmpty() || !mayStandBetween) {
                break;
            }
        }
        if (at.gap) {
            for (int j = i; j < Math.min(to, i + WIDEST_GAP + 1); j++) {
                for (String key : keys(sentence.get(j)).keys) {
                    Node next = at.next.get("_" + key);
                    if (next != null) {
                        step(next, sentence, start, j + 1, to, exact, skipped, found);
                    }
                }
            }
        }
    }

    private Keys keys(Word word) {
        return remembered.computeIfAbsent(word.surface(), s -> find(word));
    }

    private Keys find(Word word) {
        List<String> keys = new ArrayList<>();
        keys.add(stem(word));
        keys.add("=" + word.surface());
        for (Map.Entry<String, String> b :
                beginnings.headMap(word.surface(), true).entrySet()) {
            if (word.surface().startsWith(b.getKey())) {
                keys.add(b.getValue());
            }
        }
        for (String ending : endings) {
            if (word.surface().endsWith(ending)) {
                keys.add("*" + ending);
            }
        }
        boolean isKnown = keys.size() > 2 || known.contains(word.stem()) || known.contains(word.surface());
        if (!isKnown) {
            spelling.meant(word.surface())
                    .ifPresent(meant -> keys.add(words.of(meant).get(0).stem()));
        }
        return new Keys(List.copyOf(keys), isKnown || keys.size() <= 2);
    }
}
