package hingewise.rulebook.yaml;

import hingewise.plain.Quoted;
import hingewise.rulebook.Grounds;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * The keys of one block, read one by one. A key that is missing or wrong is told, and something harmless stands in for
 * it so that reading goes on; the rule book is then never handed out. Once all keys are read, those that nobody asked
 * for are told as well.
 */
public final class Fields {
    private final Context context;
    private final Values values;
    private final String owner;
    private final Node.Mapping block;
    private final Set<String> asked = new LinkedHashSet<>();

    private Fields(Context context, String owner, Node.Mapping block) {
        this.context = context;
        this.values = new Values(context);
        this.owner = owner;
        this.block = block;
    }

    /**
     * Reads a block of keys.
     *
     * @param owner what the block describes, for messages
     * @return nothing when the node is no block
     */
    public static <T> Optional<T> read(Context context, Node node, String owner, Function<Fields, T> body) {
        if (!(node instanceof Node.Mapping block)) {
            context.problems()
                    .add(node.place(), owner + " is " + node.form(), "Write its keys with their values below it.");
            return Optional.empty();
        }
        tellTwice(context, block);
        Fields fields = new Fields(context, owner, block);
        T result = body.apply(fields);
        fields.tellUnknown();
        return Optional.of(result);
    }

    static void tellTwice(Context context, Node.Mapping block) {
        Map<String, Place> seen = new HashMap<>();
        for (Node.Member member : block.members()) {
            Place before = seen.putIfAbsent(member.key(), member.place());
            if (before != null) {
                context.problems()
                        .add(
                                member.place(),
                                Quoted.of(member.key()) + " stands here a second time, after line " + before.line(),
                                "Take one of them out.");
            }
        }
    }

    private void tellUnknown() {
        block.members().stream().filter(m -> !asked.contains(m.key())).forEach(m -> {
            boolean cutText = m.key().contains(" ")
                    && m.value() instanceof Node.Scalar v
                    && v.text().isEmpty();
            if (cutText) {
                context.problems()
                        .add(
                                m.place(),
                                Quoted.of(m.key()) + " is taken for a key of " + owner,
                                "A comma ends a text inside braces: put the text in quotes.");
            } else {
                context.problems().unknown(m.place(), m.key(), "a key of " + owner, asked);
            }
        });
    }

    public Context context() {
        return context;
    }

    public Values values() {
        return values;
    }

    /** Tells a problem at a key of this block. */
    public void problem(String key, String what, String advice) {
        context.problems().add(block.placeOf(key), what, advice);
    }

    public Optional<Node> optional(String key) {
        asked.add(key);
        return block.member(key).map(Node.Member::value);
    }

    public Optional<Node> required(String key) {
        Optional<Node> node = optional(key);
        if (node.isEmpty()) {
            context.problems().add(block.place(), owner + " has no " + Quoted.of(key), "Add \"" + key + ": …\" to it.");
        }
        return node;
    }

    /** Tells if the key is missing. */
    Fields present(String key) {
        required(key);
        return this;
    }

    /** Tells if the key is missing, or is there with nothing in its list or block. */
    Fields filled(String key) {
        Optional<Node> node = required(key);
        boolean empty = node.isPresent()
                && (node.get() instanceof Node.Sequence s && s.items().isEmpty()
                        || node.get() instanceof Node.Mapping m && m.members().isEmpty());
        if (empty) {
            problem(key, Quoted.of(key) + " of " + owner + " names nothing", "Name at least one.");
        }
        return this;
    }

    public String text(String key) {
        return required(key).flatMap(values::text).orElse("");
    }

    public BigDecimal number(String key, Range range) {
        return required(key).flatMap(n -> values.number(n, range)).orElse(range.lowest());
    }

    /** A chance that must be there; nothing when it is missing or wrong. */
    Optional<Double> chance(String key) {
        return required(key).flatMap(n -> values.number(n, Range.CHANCE)).map(BigDecimal::doubleValue);
    }

    /** A chance that may be left out. */
    Optional<Double> optionalChance(String key) {
        return optional(key).flatMap(n -> values.number(n, Range.CHANCE)).map(BigDecimal::doubleValue);
    }

    double minutes() {
        return number("minutes", Range.MINUTES).doubleValue();
    }

    public BigDecimal money(String key) {
        return required(key).flatMap(values::money).orElse(BigDecimal.ZERO);
    }

    /** What an act costs; nothing when left out. */
    BigDecimal cost() {
        return optional("cost").flatMap(values::money).orElse(BigDecimal.ZERO);
    }

    boolean flag(String key) {
        return required(key).flatMap(values::flag).orElse(false);
    }

    Grounds grounds() {
        return new Grounds(text("because"), text("source"));
    }

    Optional<String> reference(String key, Section section) {
        return optional(key).flatMap(n -> values.reference(n, section));
    }

    /** A list of ids; empty when the key is left out. */
    Set<String> references(String key, Section section) {
        return set(key, n -> values.reference(n, section));
    }

    /** The families something is for; all when left out. */
    Set<String> families() {
        return optional("families").isEmpty()
                ? context.entries().ids(Section.FAMILIES)
                : filled("families").references("families", Section.FAMILIES);
    }

    /** A list without repetitions; empty when the key is left out. */
    public <T> Set<T> set(String key, Function<Node, Optional<T>> item) {
        Set<T> result = new LinkedHashSet<>();
        for (Node node : list(key)) {
            Optional<T> value = item.apply(node);
            if (value.isPresent() && !result.add(value.get())) {
                context.problems().add(node.place(), node.form() + " is named twice", "Take one of them out.");
            }
        }
        return result;
    }

    /** The items of a list; empty when the key is left out. */
    List<Node> list(String key) {
        Optional<Node> node = optional(key);
        if (node.isPresent() && !(node.get() instanceof Node.Sequence)) {
            values.problem(
                    node.get(),
                    Quoted.of(key) + " is " + node.get().form() + ", where a list should be",
                    "Write it in brackets: " + key + ": [first, second].");
        }
        return node.isPresent() && node.get() instanceof Node.Sequence s ? s.items() : new ArrayList<>();
    }

    /** Ids of a section, each with a value; empty when the key is left out. */
    <T> Map<String, T> links(String key, Section section, Function<Node, Optional<T>> value) {
        return map(key, (member, result) -> {
            values.checkReference(member.place(), member.key(), section);
            value.apply(member.value()).ifPresent(v -> result.putIfAbsent(member.key(), v));
        });
    }

    /** Takes one member of a block into the map that is being made of it. */
    public interface Taker<T> {
        void take(Node.Member member, Map<String, T> result);
    }

    /** A block whose keys are free; empty when the key is left out. */
    public <T> Map<String, T> map(String key, Taker<T> taker) {
        Map<String, T> result = new LinkedHashMap<>();
        Optional<Node> node = optional(key);
        if (node.isPresent() && node.get() instanceof Node.Mapping mapping) {
            tellTwice(context, mapping);
            mapping.members().forEach(m -> taker.take(m, result));
        } else if (node.isPresent()) {
            values.problem(
                    node.get(),
                    Quoted.of(key) + " is " + node.get().form() + ", where names with values should be",
                    "Write it in braces: " + key + ": {name: value}.");
        }
        return result;
    }

    Map<String, Double> chances(String key, Section section) {
        return links(key, section, values::strength);
    }

    Map<String, Boolean> answers(String key) {
        return links(key, Section.OBSERVATIONS, values::answer);
    }
}
