package hingewise.rulebook.yaml;

/**
 * One mistake in a rule book, for a person to mend.
 *
 * @param file the file as the user named it
 * @param line from 1; 0 when the file as a whole is meant, as when it is missing
 * @param what what is wrong, with the value it concerns; no closing full stop
 * @param advice what to do about it, as a whole sentence
 */
public record Problem(Severity severity, String file, int line, String what, String advice) {
    /** One line such as {@code rules/charging.yaml:41: "panle" is not a component. Did you mean "panel"?}. */
    public String text() {
        String where = line > 0 ? file + ":" + line : file;
        String grave = severity == Severity.WARNING ? "warning: " : "";
        return where + ": " + grave + what + ". " + advice;
    }

    @Override
    public String toString() {
        return text();
    }
}
