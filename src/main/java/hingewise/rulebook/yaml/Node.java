package hingewise.rulebook.yaml;

import java.util.List;
import java.util.Optional;

/** A YAML value that knows where it stands. */
sealed interface Node {
    Place place();

    /** What it is, for a message such as "… is a list". */
    String form();

    /**
     * The place of the key or list item of this name within this value; this value's own place if there is none.
     */
    default Place placeOf(String name) {
        return place();
    }

    /** A single value, as written; the text of an empty value is empty. */
    record Scalar(Place place, String text) implements Node {
        @Override
        public String form() {
            return text.isEmpty() ? "empty" : Quote.of(text);
        }
    }

    record Sequence(Place place, List<Node> items) implements Node {
        public Sequence {
            items = List.copyOf(items);
        }

        @Override
        public String form() {
            return "a list";
        }

        @Override
        public Place placeOf(String name) {
            return items.stream()
                    .filter(i -> i instanceof Scalar s && s.text().equals(name))
                    .findFirst()
                    .map(Node::place)
                    .orElse(place);
        }
    }

    /** Keys with values, in the order written; a key that is written twice is here twice. */
    record Mapping(Place place, List<Member> members) implements Node {
        public Mapping {
            members = List.copyOf(members);
        }

        @Override
        public String form() {
            return "a block of keys";
        }

        @Override
        public Place placeOf(String name) {
            return member(name).map(Member::place).orElse(place);
        }

        /** The first member of this key. */
        Optional<Member> member(String key) {
            return members.stream().filter(m -> m.key().equals(key)).findFirst();
        }
    }

    /**
     * A key with its value.
     *
     * @param place where the key stands
     */
    record Member(String key, Place place, Node value) {}
}
