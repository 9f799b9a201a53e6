package hingewise.rulebook;

/**
 * Something that can be at fault or be renewed.
 *
 * @param incurable whether nothing at a bench puts it right: the phone is returned, broken for parts, or sold as it is
 */
public record Component(String id, String label, boolean incurable) {}
