package hingewise.rulebook.yaml;

import hingewise.plain.Quoted;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;

/** Single values: each is read or told as a problem, and then empty. */
public record Values(Context context) {
    /** Plain decimals only: YAML would take 010 for eight, 1_000 for a thousand and 0x1F for 31. */
    private static final Pattern PLAIN_NUMBER = Pattern.compile("-?((0|[1-9][0-9]*)(\\.[0-9]+)?|\\.[0-9]+)");

    private static final Pattern WORD = Pattern.compile("[a-z]+(-[a-z]+)*");

    private static final int LONGEST_NUMBER = 18;

    /** Whether this can be a word for a number: no number and no id with digits. */
    static boolean isWord(String text) {
        return WORD.matcher(text).matches();
    }

    public Optional<String> scalar(Node node, String wanted) {
        if (node instanceof Node.Scalar s && !s.text().isEmpty()) {
            return Optional.of(s.text());
        }
        problem(
                node,
                Quoted.of(node.under()) + " is " + node.form() + ", where " + wanted + " should be",
                "Write " + wanted + ".");
        return Optional.empty();
    }

    public Optional<String> text(Node node) {
        Optional<String> text = scalar(node, "a text");
        text.ifPresent(t -> tellUnseen(node, t));
        return text;
    }

    /** A block of text, one entry to a line; lines that are blank do not count. */
    public List<String> lines(Node node) {
        List<String> lines = new ArrayList<>();
        if (scalar(node, "a block of lines").isPresent() && node instanceof Node.Scalar block) {
            int number = 0;
            for (String line : block.text().lines().map(String::strip).toList()) {
                if (!line.isEmpty()) {
                    tellUnseen(block.line(number, line), line);
                    lines.add(line);
                }
                number++;
            }
        }
        return lines;
    }

    private void tellUnseen(Node node, String text) {
        if (Quoted.line(text).indexOf('\uFFFD') >= 0) {
            problem(node, Quoted.of(text) + " has characters that cannot be seen", "Type it afresh.");
        }
    }

    public Optional<BigDecimal> number(Node node, Range range) {
        return scalar(node, "a number").flatMap(t -> number(node, t, range, "a number"));
    }

    /** A link's chance, as a number or a word of the rule book. */
    Optional<Double> strength(Node node) {
        return numberOrWord(node, Range.CHANCE, context.strengths(), "a strength");
    }

    /** A rate, as a number or a word of the rule book. */
    Optional<Double> rate(Node node) {
        return numberOrWord(node, Range.RATE, context.rates(), "a rate");
    }

    private Optional<Double> numberOrWord(Node node, Range range, Optional<Map<String, Double>> words, String noun) {
        Optional<String> text = scalar(node, "a number or a word for " + noun);
        if (text.isEmpty() || !isWord(text.get())) {
            return text.flatMap(t -> number(node, t, range, "a number or a word for " + noun))
                    .map(BigDecimal::doubleValue);
        }
        if (words.isEmpty()) {
            return Optional.of(range.lowest().doubleValue());
        }
        Double value = words.get().get(text.get());
        if (value == null) {
            context.problems()
                    .unknown(
                            node.place(),
                            text.get(),
                            "a word for " + noun,
                            words.get().keySet());
        }
        return Optional.ofNullable(value);
    }

    private Optional<BigDecimal> number(Node node, String text, Range range, String wanted) {
        String named = Quoted.of(node.under()) + " is ";
        if (!PLAIN_NUMBER.matcher(text).matches()) {
            problem(
                    node,
                    named + Quoted.of(text) + ", which is not " + wanted,
                    "Write a plain decimal such as 12, 0.5 or .025.");
            return Optional.empty();
        }
        if (text.length() > LONGEST_NUMBER) {
            problem(node, named + Quoted.of(text) + ", which has too many digits", "Write fewer digits.");
            return Optional.empty();
        }
        BigDecimal number = new BigDecimal(text);
        if (!range.holds(number)) {
            problem(node, named + text + ", which is out of range", range.advice(number));
            return Optional.empty();
        }
        return Optional.of(number);
    }

    public Optional<BigDecimal> money(Node node) {
        Optional<BigDecimal> amount = number(node, Range.MONEY);
        if (amount.isPresent() && amount.get().scale() > context.decimals().orElse(Integer.MAX_VALUE)) {
            int decimals = context.decimals().orElse(0);
            problem(
                    node,
                    Quoted.of(node.under()) + " is " + amount.get().toPlainString()
                            + ", with more decimals than the currency has",
                    decimals == 0 ? "Write a whole number." : "Write at most " + decimals + " decimals.");
        }
        return amount;
    }

    /** "yes" or "no". */
    Optional<Boolean> answer(Node node) {
        return oneOf(node, "an answer", List.of("yes", "no"), Function.identity())
                .map("yes"::equals);
    }

    /** "true" or "false". */
    Optional<Boolean> flag(Node node) {
        return oneOf(node, "true or false", List.of("true", "false"), Function.identity())
                .map("true"::equals);
    }

    <E extends Enum<E>> Optional<E> word(Node node, String noun, Class<E> type, Function<E, String> id) {
        return oneOf(node, noun, Arrays.asList(type.getEnumConstants()), id);
    }

    private <T> Optional<T> oneOf(Node node, String noun, List<T> known, Function<T, String> id) {
        Optional<String> text = scalar(node, noun);
        Optional<T> found = text.flatMap(
                t -> known.stream().filter(k -> id.apply(k).equals(t)).findFirst());
        if (text.isPresent() && found.isEmpty()) {
            context.problems()
                    .unknown(
                            node.place(),
                            text.get(),
                            noun,
                            known.stream().map(id).toList());
        }
        return found;
    }

    /** The id of an entry of the section. */
    Optional<String> reference(Node node, Section section) {
        Optional<String> id = scalar(node, section.noun);
        id.ifPresent(i -> checkReference(node.place(), i, section));
        return id;
    }

    void checkReference(Place place, String id, Section section) {
        if (context.whole() && context.entries().find(section, id).isEmpty()) {
            context.problems()
                    .unknown(place, id, section.noun, context.entries().ids(section));
        }
    }

    public void problem(Node node, String what, String advice) {
        context.problems().add(node.place(), what, advice);
    }
}
