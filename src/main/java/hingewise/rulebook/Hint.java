package hingewise.rulebook;

/**
 * Something a text may say that is no observation by itself, but from which answers follow.
 */
public record Hint(String id, String label, Phrases phrases, Grounds grounds) {}
