package hingewise.intake;

import java.util.List;

/**
 * Something that is said.
 *
 * @param clause in which it is said
 * @param of parts it is said of
 * @param context parts that the sentence before spoke of, if this one names none
 * @param turned whether it is turned round by what stands outside its clause
 */
record Saying(Clause clause, Mention what, List<Mention> of, List<Mention> context, boolean turned, double certainty) {
    Saying(Clause clause, Mention what, boolean turned, double certainty) {
        this(clause, what, List.of(), List.of(), turned, certainty);
    }

    Saying of(List<Mention> parts) {
        return new Saying(clause, what, parts, context, turned, certainty);
    }

    /** Whether the sentence before, where this one names no part, spoke of one of these, or of nothing. */
    boolean fits(Rule.Term term) {
        return context.isEmpty() || context.stream().anyMatch(t -> t.isInAny(term.any()));
    }
}
