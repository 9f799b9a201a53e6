package hingewise.rulebook.yaml;

import hingewise.plain.Quoted;
import hingewise.rulebook.Words;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The words for numbers. */
final class WordsReader {
    private WordsReader() {}

    static Words read(Fields fields) {
        List<Words.Chance> chances = chances(fields.filled("chances"));
        Map<String, Double> strengths = words(fields.present("strengths"), "strengths", Range.CHANCE);
        Map<String, Double> rates = words(fields.present("rates"), "rates", Range.RATE);
        return new Words(chances, strengths, rates, fields.grounds());
    }

    private static Map<String, Double> words(Fields fields, String key, Range range) {
        return fields.map(key, (member, result) -> {
            if (!Values.isWord(member.key())) {
                fields.context()
                        .problems()
                        .add(
                                member.place(),
                                Quoted.of(member.key()) + " cannot be a word for a number",
                                "Write lower-case letters joined by hyphens.");
            }
            BigDecimal number = fields.values().number(member.value(), range).orElse(range.lowest());
            result.putIfAbsent(member.key(), number.doubleValue());
        });
    }

    private static List<Words.Chance> chances(Fields fields) {
        List<Words.Chance> chances = new ArrayList<>();
        Optional<BigDecimal> reached = Optional.of(BigDecimal.ZERO);
        List<Node> nodes = fields.list("chances");
        for (Node node : nodes) {
            Optional<Step> step = Fields.read(fields.context(), node, "a word for a chance", Step::read);
            Optional<BigDecimal> upTo = step.flatMap(Step::upTo);
            if (upTo.isPresent() && reached.isPresent() && upTo.get().compareTo(reached.get()) <= 0) {
                fields.values()
                        .problem(
                                node,
                                upTo.get() + " is not above " + reached.get() + ", the end of the word before",
                                "Put the words in order, the smallest chance first.");
            }
            reached = upTo;
            step.ifPresent(s ->
                    chances.add(new Words.Chance(s.upTo().orElse(BigDecimal.ONE).doubleValue(), s.word())));
        }
        if (!nodes.isEmpty() && reached.isPresent() && reached.get().compareTo(BigDecimal.ONE) < 0) {
            fields.values()
                    .problem(
                            nodes.get(nodes.size() - 1),
                            "the last word for a chance does not reach 1",
                            "Write \"up-to: 1\" in it.");
        }
        return chances;
    }

    /** A word for a chance, with its upper end if that could be read. */
    private record Step(Optional<BigDecimal> upTo, String word) {
        static Step read(Fields fields) {
            return new Step(
                    fields.required("up-to").flatMap(n -> fields.values().number(n, Range.UP_TO)), fields.text("word"));
        }
    }
}
