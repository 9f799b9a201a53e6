package hingewise.rulebook;

/** Whose evidence an answer is, from the lightest to the heaviest. */
public enum EvidenceKind {
    /** The seller's words. */
    CLAIM,
    /** Seen in somebody's picture or film. */
    PHOTO,
    /** One's own look, ear or touch. */
    LOOK,
    /** A measurement with an instrument. */
    METER;

    /** The word used in rule books, case files and on the command line. */
    public String id() {
        return name().toLowerCase(java.util.Locale.ROOT);
    }
}
