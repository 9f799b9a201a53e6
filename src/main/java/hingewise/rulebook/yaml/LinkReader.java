package hingewise.rulebook.yaml;

import hingewise.plain.Quoted;
import hingewise.rulebook.ByFamily;
import hingewise.rulebook.Raise;
import hingewise.rulebook.Sign;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Links with their strengths, and rates by family. */
final class LinkReader {
    private LinkReader() {}

    private record Link(double strength, Optional<String> because) {}

    static List<Sign> signs(Fields fields) {
        return links(fields, "signs", Section.OBSERVATIONS).entrySet().stream()
                .map(e -> new Sign(
                        e.getKey(), e.getValue().strength(), e.getValue().because()))
                .toList();
    }

    static List<Raise> raises(Fields fields) {
        return links(fields, "raised-by", Section.HISTORIES).entrySet().stream()
                .map(e -> new Raise(
                        e.getKey(), e.getValue().strength(), e.getValue().because()))
                .toList();
    }

    private static Map<String, Link> links(Fields fields, String key, Section section) {
        return fields.links(key, section, n -> link(fields, n));
    }

    private static Optional<Link> link(Fields fields, Node node) {
        if (!(node instanceof Node.Mapping)) {
            return fields.values().strength(node).map(s -> new Link(s, Optional.empty()));
        }
        return Fields.read(fields.context(), node, "link " + Quoted.of(node.under()), f -> {
            double strength = f.required("strength")
                    .flatMap(f.values()::strength)
                    .orElse(Range.CHANCE.lowest().doubleValue());
            return new Link(strength, f.optional("because").flatMap(f.values()::text));
        });
    }

    /**
     * Chances by id, as the value of another id.
     *
     * @param value what each is, for a message
     */
    static Optional<Map<String, Double>> strengths(Fields fields, Node node, Section section, String value) {
        if (!(node instanceof Node.Mapping block)) {
            fields.values()
                    .problem(
                            node,
                            Quoted.of(node.under()) + " is " + node.form() + ", where names with a " + value
                                    + " each should be",
                            "Write {" + section.singular() + ": " + value + "}.");
            return Optional.empty();
        }
        Fields.tellTwice(fields.context(), block);
        Map<String, Double> strengths = new LinkedHashMap<>();
        for (Node.Member member : block.members()) {
            fields.values().checkReference(member.place(), member.key(), section);
            fields.values().strength(member.value()).ifPresent(s -> strengths.put(member.key(), s));
        }
        return Optional.of(strengths);
    }

    /** A rate for all families, or {@code {all: …, book: …}}. */
    static ByFamily byFamily(Fields fields, String key) {
        Optional<Node> node = fields.required(key);
        ByFamily stand = ByFamily.always(Range.RATE.lowest().doubleValue());
        if (node.isEmpty() || !(node.get() instanceof Node.Mapping mapping)) {
            return node.flatMap(fields.values()::rate).map(ByFamily::always).orElse(stand);
        }
        Fields.tellTwice(fields.context(), mapping);
        Map<String, Double> exceptions = new LinkedHashMap<>();
        Optional<Double> all = Optional.empty();
        for (Node.Member member : mapping.members()) {
            Optional<Double> rate = fields.values().rate(member.value());
            if (member.key().equals("all")) {
                all = rate;
            } else {
                fields.values().checkReference(member.place(), member.key(), Section.FAMILIES);
                rate.ifPresent(r -> exceptions.put(member.key(), r));
            }
        }
        if (mapping.member("all").isEmpty()) {
            fields.problem(
                    key,
                    Quoted.of(key) + " differs by family and has no \"all\"",
                    "Add \"all: …\" for the families that are not named.");
        }
        return new ByFamily(all.orElse(stand.common()), exceptions);
    }
}
