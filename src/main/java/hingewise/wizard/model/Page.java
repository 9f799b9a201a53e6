package hingewise.wizard.model;

/** What the window shows. */
public enum Page {
    /** Open a case, take a demo case, or start a new one. */
    START,
    /** One question at a time. */
    QUESTIONS,
    /** The parts to order and the condition note. */
    NOTE,
    /** How the leading causes moved, entry by entry. */
    HISTORY,
    /** What may be paid, how the routes compare, and what that hangs on. */
    MONEY,
    /** The whole plan, to work by at the bench. */
    SHEET
}
