package hingewise.rulebook;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Something to ask, check or try.
 *
 * @param how what to do, step by step, in one or two sentences
 * @param minutes hands-on minutes, access not included
 * @param cost money spent on it, in the bench's currency
 * @param access the access state it needs; empty when the phone stays closed
 * @param needs observations and the answers they must have, in the order to ask, first
 * @param settles observations it answers (a try: those to look at again afterwards)
 * @param cures for a try: causes and the chance that it cures each, in .001–.999
 * @param damages what it may bring about
 * @param tools tools it takes, those for opening not included
 * @param cautions cautions to show with it
 * @param families families it applies to
 */
public record Confirmation(
        String id,
        Kind kind,
        String label,
        String how,
        double minutes,
        BigDecimal cost,
        Optional<String> access,
        Map<String, Boolean> needs,
        Set<String> settles,
        Map<String, Double> cures,
        Damages damages,
        Set<String> tools,
        Set<String> cautions,
        Set<Moment> moments,
        Set<String> families,
        Grounds grounds) {
    public Confirmation {
        needs = Ordered.copyOf(needs);
        settles = Ordered.copyOf(settles);
        cures = Ordered.copyOf(cures);
        tools = Ordered.copyOf(tools);
        cautions = Ordered.copyOf(cautions);
        moments = Set.copyOf(moments);
        families = Set.copyOf(families);
    }

    /** What sort of confirmation it is. */
    public enum Kind {
        /** Asked of the seller. */
        QUESTION,
        /** Looked at, felt or measured. */
        CHECK,
        /** An act that may also cure. */
        TRY;

        public String id() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }
    }
}
