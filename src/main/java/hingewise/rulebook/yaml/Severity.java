package hingewise.rulebook.yaml;

/** How grave a problem is. */
public enum Severity {
    /** The rule book cannot be used. */
    ERROR,
    /** The rule book can be used, and something in it is probably not meant so. */
    WARNING
}
