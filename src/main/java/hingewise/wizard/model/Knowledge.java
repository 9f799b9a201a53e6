package hingewise.wizard.model;

import hingewise.assessment.Assessor;

/** Whether the rule book has been read. */
public sealed interface Knowledge {
    /** It is being read. */
    record Loading() implements Knowledge {}

    /** It has been read. */
    record Ready(Assessor assessor) implements Knowledge {}

    /**
     * It could not be read.
     *
     * @param words what is wrong and what to do
     */
    record Failed(String words) implements Knowledge {}
}
