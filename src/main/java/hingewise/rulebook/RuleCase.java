package hingewise.rulebook;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A case that the rule book must answer rightly; data beside the rules, run as a test.
 *
 * @param family family id
 * @param seen what is recorded
 * @param expect what the answer must and must not say
 */
public record RuleCase(String id, String title, String family, List<Seen> seen, Expect expect, Grounds grounds) {
    public RuleCase {
        seen = List.copyOf(seen);
    }

    /** One recorded answer; {@code about} names an observation or a choice. */
    public record Seen(String about, String answer, EvidenceKind kind) {}

    /**
     * What the answer must and must not say.
     *
     * @param leads the cause that must rank first
     * @param among causes that must be in the first three
     * @param notAmong causes that must not be in the first three
     * @param firstTry the confirmation that must be proposed first
     * @param firstInside the confirmation that must come first of those that open the phone
     * @param parts parts that must be on the list
     * @param noParts parts that must not be
     * @param cautions cautions that must show
     * @param noCautions cautions that must not
     * @param noPartAtAll whether no part at all may be on the list
     */
    public record Expect(
            Optional<String> leads,
            Set<String> among,
            Set<String> notAmong,
            Optional<String> firstTry,
            Optional<String> firstInside,
            Set<String> parts,
            Set<String> noParts,
            Set<String> cautions,
            Set<String> noCautions,
            boolean noPartAtAll) {
        public Expect {
            among = Ordered.copyOf(among);
            notAmong = Ordered.copyOf(notAmong);
            parts = Ordered.copyOf(parts);
            noParts = Ordered.copyOf(noParts);
            cautions = Ordered.copyOf(cautions);
            noCautions = Ordered.copyOf(noCautions);
        }
    }
}
