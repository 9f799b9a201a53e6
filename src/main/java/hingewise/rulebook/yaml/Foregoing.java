package hingewise.rulebook.yaml;

import hingewise.rulebook.Access;
import hingewise.rulebook.Observation;
import hingewise.rulebook.RuleBook;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Finds what must be answered before opening and could only be seen once it is open. */
final class Foregoing {
    private Foregoing() {}

    /** A state of opening and an observation that must be answered before. */
    record Step(String access, String observation) {}

    static Set<Step> circles(RuleBook rules) {
        Set<Step> circles = new LinkedHashSet<>();
        rules.access()
                .values()
                .forEach(a -> a.needs().keySet().stream()
                        .filter(o -> leadsThrough(rules, o, a.id()))
                        .forEach(o -> circles.add(new Step(a.id(), o))));
        return circles;
    }

    /** Whether an observation cannot be answered before a state is open. */
    private static boolean leadsThrough(RuleBook rules, String observation, String access) {
        Set<String> observations = new HashSet<>();
        Set<String> opened = new HashSet<>();
        ask(rules, observation, observations, opened);
        return opened.contains(access);
    }

    private static void ask(RuleBook rules, String id, Set<String> observations, Set<String> opened) {
        Observation o = rules.observations().get(id);
        if (o != null && observations.add(id)) {
            o.needs().keySet().forEach(n -> ask(rules, n, observations, opened));
            o.access().ifPresent(a -> open(rules, a, observations, opened));
        }
    }

    private static void open(RuleBook rules, String id, Set<String> observations, Set<String> opened) {
        Map<String, Access> access = rules.access();
        for (Optional<Access> at = Optional.ofNullable(access.get(id));
                at.isPresent() && opened.add(at.get().id());
                at = at.get().parent().map(access::get)) {
            at.get().needs().keySet().forEach(n -> ask(rules, n, observations, opened));
        }
    }
}
