package hingewise.review;

import hingewise.rulebook.RuleBook;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Tools that nothing takes: no step of opening and nothing that is done. */
final class Idle {
    private Idle() {}

    static List<Remark> of(RuleBook rules) {
        Set<String> taken = Stream.concat(
                        rules.access().values().stream().flatMap(a -> a.tools().stream()),
                        rules.confirmations().values().stream().flatMap(c -> c.tools().stream()))
                .collect(Collectors.toSet());
        return rules.tools().keySet().stream()
                .filter(t -> !taken.contains(t))
                .map(t -> new Remark(
                        "tools",
                        t,
                        "nothing takes it",
                        "Name it under the tools of what is done with it, or take it out."))
                .toList();
    }
}
