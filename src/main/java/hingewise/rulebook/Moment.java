package hingewise.rulebook;

/** When a question makes sense. */
public enum Moment {
    /** Before buying: a text, some pictures, a seller who may answer. */
    LISTING,
    /** The phone is on the desk, closed. */
    ARRIVAL,
    /** On the bench, something is open. */
    OPENED,
    /** Repaired, before the condition note is written. */
    AFTER_REPAIR;

    /** The word used in rule books and case files. */
    public String id() {
        return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
    }
}
