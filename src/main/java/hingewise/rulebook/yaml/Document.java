package hingewise.rulebook.yaml;

import hingewise.plain.Quoted;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** One file of a rule book that is in a format this program reads. */
record Document(Node.Mapping root) {
    /** What a file may hold, by where it stands. */
    enum Kind {
        RULES,
        /** A file of the folder of examples, which is left unread where no texts are read. */
        EXAMPLES;

        /** The words that may head a part of such a file. */
        List<String> keys() {
            Stream<String> sections = Section.keys().stream().filter(this::holds);
            return Stream.concat(this == RULES ? ONCE.stream() : Stream.of(FORMAT_KEY), sections)
                    .toList();
        }

        private boolean holds(String section) {
            return (this == EXAMPLES) == section.equals(Section.EXAMPLES.key());
        }
    }

    private static final String FORMAT_KEY = "format";
    private static final List<String> ONCE = List.of(FORMAT_KEY, "title", "bench", "words", "reliability");

    /** The format written by rules/README.md. */
    private static final String FORMAT = "1";

    private static final Pattern LATER = Pattern.compile("[2-9]|[1-9][0-9]{1,3}");

    /** The document, and what is wrong with its outermost keys told; a refusal when it is no rule book at all. */
    static Document read(Source source, Kind kind, Problems problems) throws Refusal {
        Optional<Node> tree = TreeParser.parse(source);
        Place top = new Place(source.name(), 1);
        if (tree.isEmpty()) {
            throw new Refusal(top, "the file is empty", "Write rules into it, or delete it.");
        }
        if (!(tree.get() instanceof Node.Mapping root)) {
            throw new Refusal(
                    tree.get().place(),
                    "the file holds " + tree.get().form() + ", where sections should be",
                    "Begin with \"format: " + FORMAT + "\" and compare with rules/README.md.");
        }
        checkFormat(root);
        List<String> keys = kind.keys();
        root.members().stream().filter(m -> !keys.contains(m.key())).forEach(m -> {
            if (Section.keys().contains(m.key())) {
                problems.add(m.place(), misplaced(kind, m.key()), "Move it into a file there.");
            } else {
                problems.unknown(m.place(), m.key(), "a section", keys);
            }
        });
        Section.keys().forEach(k -> checkSection(root, k, problems));
        return new Document(root);
    }

    private static String misplaced(Kind kind, String section) {
        return "the section " + Quoted.of(section)
                + (kind == Kind.RULES
                        ? " belongs into the folder " + Quoted.of(Folder.EXAMPLES) + " of the rule book"
                        : " belongs outside of the folder " + Quoted.of(Folder.EXAMPLES));
    }

    private static void checkSection(Node.Mapping root, String key, Problems problems) {
        List<Node.Member> members = new Document(root).under(key);
        members.stream()
                .skip(1)
                .forEach(m -> problems.add(
                        m.place(),
                        "the section " + Quoted.of(key) + " stands here a second time, after line "
                                + members.get(0).place().line(),
                        "Put both together."));
        members.stream()
                .filter(m -> !(m.value() instanceof Node.Mapping))
                .forEach(m -> problems.add(
                        m.place(),
                        "the section " + Quoted.of(key) + " is " + m.value().form(),
                        "Write ids with their entries below it, or take the section out."));
    }

    private static void checkFormat(Node.Mapping root) throws Refusal {
        Optional<Node.Member> format = root.member(FORMAT_KEY);
        if (format.isEmpty()) {
            throw new Refusal(
                    new Place(root.place().file(), 1),
                    "the file does not say which format it has",
                    "Write \"format: " + FORMAT + "\" as its first line.");
        }
        Node value = format.get().value();
        if (value instanceof Node.Scalar later && LATER.matcher(later.text()).matches()) {
            throw new Refusal(
                    value.place(),
                    "the file is in format " + later.text() + ", made for a later version of this program, which reads"
                            + " format " + FORMAT + "; what changed stands in that version's rules/README.md",
                    "Use that version. To go on with this one, write \"format: " + FORMAT
                            + "\" and mend what check-rules then lists, by this version's rules/README.md.");
        }
        if (!(value instanceof Node.Scalar s && s.text().equals(FORMAT))) {
            throw new Refusal(
                    value.place(),
                    "the format is " + value.form() + ", and there is only format " + FORMAT,
                    "Write \"format: " + FORMAT + "\" and compare the rules with rules/README.md.");
        }
    }

    /** All that stands under this section, which is more than one value when the section is written twice. */
    List<Node.Member> under(String key) {
        return root.members().stream().filter(m -> m.key().equals(key)).toList();
    }
}
