package hingewise.rulebook;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A language that listings are read in: everything the reader must know of it is data.
 *
 * @param stemming how endings are taken off
 * @param common frequent small words, by which the language of a text is recognised
 * @param sets word sets by name; rules/README.md tells which names mean something to the reader
 * @param topics names of those sets that are parts of a phone, of which something is said
 * @param trust how far a claim is to be trusted; empty when whatever a phrase claims is suggested
 * @param letter what stands around questions to a seller; empty when nobody writes to sellers in it
 */
public record Language(
        String id,
        String label,
        Stemming stemming,
        Set<String> common,
        Map<String, List<String>> sets,
        Set<String> topics,
        Optional<Letter> letter,
        Optional<Trust> trust,
        Grounds grounds) {
    /**
     * What stands around the questions of a message to a seller.
     */
    public record Letter(String greeting, String closing) {}

    /** How endings are taken off. */
    public enum Stemming {
        ENGLISH("english"),
        GERMAN("german"),
        /** Words are compared as they stand. */
        NONE("none");

        private final String id;

        Stemming(String id) {
            this.id = id;
        }

        public String id() {
            return id;
        }
    }

    public Language {
        common = Ordered.copyOf(common);
        sets = Ordered.copyOf(sets);
        topics = Ordered.copyOf(topics);
    }
}
