package hingewise.rulebook;

/**
 * Why a rule stands: one sentence a technician would say, and a named publication or "common practice".
 */
public record Grounds(String because, String source) {}
