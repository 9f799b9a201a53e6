package hingewise.review;

import hingewise.rulebook.Cause;
import hingewise.rulebook.History;
import hingewise.rulebook.RuleBook;
import hingewise.rulebook.RuleCase;
import hingewise.rulebook.Sign;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Which links of a rule book its cases try. A link from a cause to a sign is tried by a case that expects the cause
 * where the sign is seen; one from a history to a cause, where a sign of the history is seen.
 *
 * @param all how many links there are
 * @param untried those that no case tries, by cause
 */
public record Links(int all, Map<String, List<String>> untried) {
    public Links {
        untried = Map.copyOf(untried);
    }

    public static Links of(RuleBook rules) {
        Map<String, Set<String>> seenWith = new HashMap<>();
        for (RuleCase c : rules.cases()) {
            Map<String, Boolean> settled = Unexercised.settled(rules, c);
            Set<String> yes = settled.keySet().stream()
                    .filter(o -> settled.getOrDefault(o, false))
                    .collect(Collectors.toSet());
            Unexercised.expectedBy(c)
                    .forEach(cause -> seenWith.computeIfAbsent(cause, k -> new HashSet<>())
                            .addAll(yes));
        }
        Map<String, List<String>> untried = new HashMap<>();
        int all = 0;
        for (Cause cause : rules.causes().values()) {
            Set<String> seen = seenWith.getOrDefault(cause.id(), Set.of());
            all += cause.signs().size() + cause.raisedBy().size();
            List<String> never = Stream.concat(
                            cause.signs().stream().map(Sign::observation).filter(o -> !seen.contains(o)),
                            cause.raisedBy().stream()
                                    .map(r -> r.history())
                                    .filter(h -> signs(rules, h).noneMatch(seen::contains)))
                    .toList();
            if (!never.isEmpty()) {
                untried.put(cause.id(), never);
            }
        }
        return new Links(all, untried);
    }

    private static Stream<String> signs(RuleBook rules, String history) {
        History h = rules.histories().get(history);
        return h == null ? Stream.of() : h.signs().stream().map(Sign::observation);
    }

    public int untriedCount() {
        return untried.values().stream().mapToInt(List::size).sum();
    }

    /** One remark for each cause with untried links, in the order of the rule book. */
    public List<Remark> remarks(RuleBook rules) {
        return rules.causes().keySet().stream()
                .filter(untried::containsKey)
                .map(c -> new Remark(
                        "causes",
                        c,
                        "no case tries its links with " + String.join(", ", untried.getOrDefault(c, List.of())),
                        "See that they are meant, and add a case for those that matter."))
                .toList();
    }
}
