package hingewise.rulebook.yaml;

import hingewise.plain.Quoted;
import hingewise.rulebook.Examples;
import hingewise.rulebook.Hint;
import hingewise.rulebook.Language;
import hingewise.rulebook.Phrase;
import hingewise.rulebook.Phrases;
import hingewise.rulebook.Trust;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** How sellers write: the languages, and the phrases of each observation. */
final class PhraseReader {
    private PhraseReader() {}

    static Language language(String id, Fields fields) {
        Map<String, List<String>> sets = fields.filled("sets")
                .map("sets", (member, result) -> result.putIfAbsent(member.key(), words(fields, member)));
        tellUnknownSets(fields, sets);
        return new Language(
                id,
                fields.text("label"),
                fields.required("stemming")
                        .flatMap(n ->
                                fields.values().word(n, "a stemming", Language.Stemming.class, Language.Stemming::id))
                        .orElse(Language.Stemming.NONE),
                fields.filled("common").set("common", fields.values()::text),
                sets,
                fields.set(
                        "topics",
                        n -> fields.values().text(n).filter(t -> {
                            known(fields, n, t, sets.keySet());
                            return true;
                        })),
                fields.optional("letter")
                        .flatMap(n -> Fields.read(
                                fields.context(),
                                n,
                                "\"letter\"",
                                f -> new Language.Letter(f.text("greeting"), f.text("closing")))),
                fields.optional("trust")
                        .flatMap(n -> Fields.read(fields.context(), n, "\"trust\"", PhraseReader::trust)),
                fields.grounds());
    }

    private static Trust trust(Fields fields) {
        double least = fields.required("least")
                .flatMap(n -> fields.values().number(n, Range.CHANCE))
                .map(BigDecimal::doubleValue)
                .orElse(Range.CHANCE.lowest().doubleValue());
        Map<Trust.Mark, Double> weights = new EnumMap<>(Trust.Mark.class);
        for (Trust.Mark mark : Trust.Mark.values()) {
            fields.required(mark.id())
                    .flatMap(n -> fields.values().number(n, Range.WEIGHT))
                    .ifPresent(w -> weights.put(mark, w.doubleValue()));
        }
        return new Trust(least, weights, fields.grounds());
    }

    static Examples examples(String id, Fields fields) {
        Map<String, Examples.Answers> sentences =
                fields.links("sentences", Section.OBSERVATIONS, n -> answers(fields, n));
        String language = fields.present("language")
                .reference("language", Section.LANGUAGES)
                .orElse("");
        return new Examples(id, language, sentences, lines(fields, "silent"), fields.grounds());
    }

    private static Optional<Examples.Answers> answers(Fields fields, Node node) {
        return Fields.read(
                fields.context(), node, "an example", f -> new Examples.Answers(lines(f, "yes"), lines(f, "no")));
    }

    /** A block of text with one sentence to a line: read several times as fast as a list, of which there are thousands. */
    private static List<String> lines(Fields fields, String key) {
        return fields.optional(key).map(fields.values()::lines).orElse(List.of());
    }

    private static List<String> words(Fields fields, Node.Member member) {
        if (!(member.value() instanceof Node.Sequence list)) {
            fields.values()
                    .problem(
                            member.value(),
                            "word set " + Quoted.of(member.key()) + " is "
                                    + member.value().form() + ", where a list should be",
                            "Write its words in brackets: " + member.key() + ": [first, second].");
            return List.of();
        }
        return list.items().stream()
                .flatMap(n -> fields.values().text(n).stream())
                .toList();
    }

    /** A set may take in others by name; they must be there and must not go in a circle. */
    private static void tellUnknownSets(Fields fields, Map<String, List<String>> sets) {
        sets.forEach((name, words) -> words.stream()
                .filter(w -> w.charAt(0) == Phrase.SET)
                .filter(w -> !earlier(sets, name, w.substring(1)))
                .forEach(w -> fields.problem(
                        "sets",
                        "word set " + Quoted.of(name) + " takes in " + Quoted.of(w)
                                + ", which does not stand before it",
                        "Write the set that is taken in above the one that takes it in.")));
    }

    private static boolean earlier(Map<String, List<String>> sets, String name, String other) {
        List<String> order = new ArrayList<>(sets.keySet());
        return order.contains(other) && order.indexOf(other) < order.indexOf(name);
    }

    private static void known(Fields fields, Node node, String set, Set<String> sets) {
        if (!sets.contains(set)) {
            fields.context().problems().unknown(node.place(), set, "a word set of this language", sets);
        }
    }

    static Hint hint(String id, Fields fields) {
        return new Hint(id, fields.text("label"), phrases(fields.present("phrases")), fields.grounds());
    }

    static Phrases phrases(Fields fields) {
        return fields.optional("phrases")
                .flatMap(node -> Fields.read(fields.context(), node, "\"phrases\"", PhraseReader::byLanguage))
                .orElse(Phrases.NONE);
    }

    private static Phrases byLanguage(Fields fields) {
        boolean past = fields.optional("past").flatMap(fields.values()::flag).orElse(false);
        Map<String, Phrases.Said> said = new LinkedHashMap<>();
        for (String language : fields.context().entries().ids(Section.LANGUAGES)) {
            fields.optional(language)
                    .flatMap(n -> Fields.read(
                            fields.context(),
                            n,
                            "the phrases in " + Quoted.of(language),
                            f -> new Phrases.Said(
                                    list(f, "yes"),
                                    list(f, "no"),
                                    f.optional("ask").flatMap(f.values()::text))))
                    .ifPresent(s -> said.put(language, s));
        }
        return new Phrases(past, said, conclusions(fields, "follows"), conclusions(fields, "within"));
    }

    private static List<Phrases.Conclusion> conclusions(Fields fields, String key) {
        return fields.optional(key)
                .flatMap(n -> Fields.read(fields.context(), n, Quoted.of(key), PhraseReader::conclusions))
                .orElse(List.of());
    }

    private static List<Phrases.Conclusion> conclusions(Fields fields) {
        List<Phrases.Conclusion> conclusions = new ArrayList<>();
        fields.list("yes")
                .forEach(n -> when(fields, n).ifPresent(w -> conclusions.add(new Phrases.Conclusion(true, w))));
        fields.list("no")
                .forEach(n -> when(fields, n).ifPresent(w -> conclusions.add(new Phrases.Conclusion(false, w))));
        return conclusions;
    }

    /** Answers, each to an observation or a hint. */
    private static Optional<Map<String, Boolean>> when(Fields fields, Node node) {
        if (!(node instanceof Node.Mapping block) || block.members().isEmpty()) {
            fields.values()
                    .problem(
                            node,
                            "what something follows from is " + node.form(),
                            "Write answers to observations or hints in braces: {first: yes, second: no}.");
            return Optional.empty();
        }
        Entries entries = fields.context().entries();
        Map<String, Boolean> when = new LinkedHashMap<>();
        for (Node.Member member : block.members()) {
            if (entries.find(Section.HINTS, member.key()).isEmpty()) {
                fields.values().checkReference(member.place(), member.key(), Section.OBSERVATIONS);
            }
            fields.values().answer(member.value()).ifPresent(a -> when.put(member.key(), a));
        }
        return Optional.of(when);
    }

    private static List<Phrase> list(Fields fields, String key) {
        return fields.list(key).stream()
                .flatMap(n -> fields.values().text(n).flatMap(t -> phrase(fields, n, t)).stream())
                .toList();
    }

    private static Optional<Phrase> phrase(Fields fields, Node node, String text) {
        try {
            return Optional.of(Phrase.parse(text));
        } catch (IllegalArgumentException e) {
            fields.values()
                    .problem(
                            node,
                            Quoted.of(text) + " is no phrase: " + e.getMessage(),
                            "Write terms with blanks between them, as rules/README.md says.");
            return Optional.empty();
        }
    }
}
