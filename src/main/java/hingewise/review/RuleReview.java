package hingewise.review;

import hingewise.rulebook.RuleBook;
import java.util.List;
import java.util.stream.Stream;

/** All that can be remarked on a rule book that was read without problems. */
public final class RuleReview {
    private RuleReview() {}

    /**
     * The remarks, by what is looked for and then in the order of the rule book.
     *
     * @param entanglements how entangled its cases are
     */
    public static List<Remark> of(RuleBook rules, List<Entanglement> entanglements) {
        return Stream.of(
                        Twins.of(rules),
                        DeadEnds.of(rules),
                        NeedlessOpenings.of(rules),
                        BeforeOpening.of(rules),
                        Idle.of(rules),
                        Marginals.of(rules),
                        Unexercised.of(rules),
                        Lengths.of(rules),
                        SharedPhrases.of(rules),
                        Entanglement.remarks(entanglements))
                .flatMap(List::stream)
                .toList();
    }
}
