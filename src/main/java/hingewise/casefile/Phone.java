package hingewise.casefile;

/**
 * The phone on the desk.
 *
 * @param family family id of the rule book, such as "clamshell"
 * @param label maker, model, colour as the user calls it; may be blank
 */
public record Phone(String family, String label) {}
