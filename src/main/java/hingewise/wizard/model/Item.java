package hingewise.wizard.model;

import hingewise.rulebook.Question;

/**
 * A question and how it stands in a case.
 *
 * @param said what is recorded, or why it cannot be asked; blank for an open question
 */
public record Item(Question question, Standing standing, String said) {
    /** How a question stands. */
    public enum Standing {
        /** Can be asked and has no answer: not checked. */
        OPEN,
        ANSWERED,
        /** Looked at without an answer, which is not a "no". */
        UNSURE,
        /** What is recorded makes it impossible to observe. */
        NOT_ASKABLE
    }
}
