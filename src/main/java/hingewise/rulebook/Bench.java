package hingewise.rulebook;

/**
 * What the rule book's own costs are in.
 *
 * @param currency ISO 4217 code
 */
public record Bench(String currency, Grounds grounds) {}
