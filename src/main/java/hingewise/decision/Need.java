package hingewise.decision;

/**
 * An answer that must be had before an act is done.
 *
 * @param answer what must be reported; otherwise the act is left
 * @param cost of asking
 */
public record Need(Look look, boolean answer, double cost) {}
