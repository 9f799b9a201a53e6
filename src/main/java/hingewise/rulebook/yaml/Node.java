package hingewise.rulebook.yaml;

import hingewise.plain.Quoted;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/** A YAML value that knows where it stands. */
public sealed interface Node {
    /** The line it is written on; for a list or block under a key, the line of the key. */
    Place place();

    /** The key it stands under; for an item of a list, the key of the list. */
    String under();

    /** What it is, for a message such as "… is a list". */
    String form();

    /** Where a key or value of this name stands within. */
    Optional<Place> find(String name);

    /**
     * A single value, as written; the text of an empty value is empty.
     *
     * @param firstLine where its text begins, if all its lines stand in the file as they are here
     */
    record Scalar(Place place, String under, String text, OptionalInt firstLine) implements Node {
        Scalar(Place place, String under, String text) {
            this(place, under, text, OptionalInt.empty());
        }

        /** The same as if it were this line of its text alone, counted from 0. */
        Scalar line(int number, String line) {
            Place at = firstLine.isPresent() ? new Place(place.file(), firstLine.getAsInt() + number) : place;
            return new Scalar(at, under, line);
        }

        @Override
        public String form() {
            return text.isEmpty() ? "empty" : Quoted.of(text);
        }

        @Override
        public Optional<Place> find(String name) {
            return text.equals(name) ? Optional.of(place) : Optional.empty();
        }
    }

    record Sequence(Place place, String under, List<Node> items) implements Node {
        public Sequence {
            items = List.copyOf(items);
        }

        @Override
        public String form() {
            return "a list";
        }

        @Override
        public Optional<Place> find(String name) {
            return items.stream().flatMap(i -> i.find(name).stream()).findFirst();
        }
    }

    /** Keys with values, in the order written; a key that is written twice is here twice. */
    record Mapping(Place place, String under, List<Member> members) implements Node {
        public Mapping {
            members = List.copyOf(members);
        }

        @Override
        public String form() {
            return "a block of keys";
        }

        @Override
        public Optional<Place> find(String name) {
            return member(name)
                    .map(Member::place)
                    .or(() -> members.stream()
                            .flatMap(m -> m.value().find(name).stream())
                            .findFirst());
        }

        /** The first member of this key. */
        public Optional<Member> member(String key) {
            return members.stream().filter(m -> m.key().equals(key)).findFirst();
        }

        /** The same block without the members of other keys. */
        public Mapping only(Set<String> keys) {
            return new Mapping(
                    place,
                    under,
                    members.stream().filter(m -> keys.contains(m.key())).toList());
        }

        /** Where the key stands, or the block if it is not there. */
        public Place placeOf(String key) {
            return member(key).map(Member::place).orElse(place);
        }
    }

    /**
     * A key with its value.
     *
     * @param place where the key stands
     */
    record Member(String key, Place place, Node value) {}
}
