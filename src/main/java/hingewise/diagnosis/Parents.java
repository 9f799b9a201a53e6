package hingewise.diagnosis;

import hingewise.rulebook.Cause;
import hingewise.rulebook.History;
import hingewise.rulebook.RuleBook;
import hingewise.rulebook.Sign;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What shows each observation, in one family. */
record Parents(Map<String, List<Parent>> of) {
    /**
     * One link into an observation.
     *
     * @param cause whether it comes from a cause; else from a history
     */
    record Parent(boolean cause, String id, double strength) {}

    static Parents in(RuleBook rules, String family) {
        Map<String, List<Parent>> of = new LinkedHashMap<>();
        for (History history : rules.histories().values()) {
            for (Sign sign : history.signs()) {
                add(of, sign, new Parent(false, history.id(), sign.strength()));
            }
        }
        for (Cause cause : rules.causesOf(family)) {
            for (Sign sign : cause.signs()) {
                add(of, sign, new Parent(true, cause.id(), sign.strength()));
            }
        }
        return new Parents(of);
    }

    private static void add(Map<String, List<Parent>> of, Sign sign, Parent parent) {
        of.computeIfAbsent(sign.observation(), o -> new ArrayList<>()).add(parent);
    }

    List<Parent> of(String observation) {
        return of.getOrDefault(observation, List.of());
    }
}
