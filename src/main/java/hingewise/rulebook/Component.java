package hingewise.rulebook;

/** Something that can be at fault or be renewed. */
public record Component(String id, String label) {}
