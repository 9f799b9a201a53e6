package hingewise.rulebook;

/** Something to have on the bench that is not used up, or hardly so. */
public record Tool(String id, String label) {}
