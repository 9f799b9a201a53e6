package hingewise.review;

import hingewise.rulebook.Confirmation;
import hingewise.rulebook.Observation;
import hingewise.rulebook.RuleBook;
import java.util.List;

/** Steps behind an opening that do nothing which could not be done on the closed phone. */
final class NeedlessOpenings {
    private NeedlessOpenings() {}

    static List<Remark> of(RuleBook rules) {
        return rules.confirmations().values().stream()
                .filter(c -> c.access().isPresent() && needless(rules, c))
                .map(c -> new Remark(
                        "confirmations",
                        c.id(),
                        "it waits for \"" + c.access().orElse("")
                                + "\", and all it does can be done on the closed phone",
                        "Take its access out, or name what it settles or cures inside."))
                .toList();
    }

    private static boolean needless(RuleBook rules, Confirmation c) {
        if (c.kind() == Confirmation.Kind.TRY) {
            return !c.cures().isEmpty()
                    && c.cures().entrySet().stream()
                            .allMatch(cure -> rules.confirmations().values().stream()
                                    .filter(other -> other.access().isEmpty())
                                    .anyMatch(other ->
                                            other.cures().getOrDefault(cure.getKey(), 0.0) >= cure.getValue()));
        }
        return c.settles().stream().map(rules.observations()::get).allMatch(o -> o != null && closed(o));
    }

    private static boolean closed(Observation o) {
        return o.access().isEmpty();
    }
}
