package hingewise.rulebook.yaml;

import hingewise.plain.Quoted;
import hingewise.rulebook.Damages;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;

/** What an act may bring about: always, and where something is the matter already. */
final class DamageReader {
    private static final String WHERE = "damages-where";

    private DamageReader() {}

    static Damages damages(Fields fields) {
        Map<String, Double> always = fields.chances("damages", Section.CAUSES);
        Damages damages = new Damages(
                always,
                fields.links(WHERE, Section.CAUSES, n -> LinkReader.strengths(fields, n, Section.CAUSES, "chance")));
        fields.optional(WHERE).ifPresent(n -> check(fields, n));
        return damages;
    }

    private static void check(Fields fields, Node where) {
        if (!(where instanceof Node.Mapping states)) {
            return;
        }
        Map<String, Set<String>> worseWith = new HashMap<>();
        for (Node.Member state : states.members()) {
            if (!(state.value() instanceof Node.Mapping brought)) {
                continue;
            }
            if (brought.members().isEmpty()) {
                fields.context()
                        .problems()
                        .add(
                                state.place(),
                                Quoted.of(state.key()) + " brings nothing about",
                                "Name a cause, or take it out.");
            }
            for (Node.Member damage : brought.members()) {
                Set<String> before = worseWith.computeIfAbsent(damage.key(), c -> new HashSet<>());
                if (damage.key().equals(state.key())) {
                    fields.context()
                            .problems()
                            .add(
                                    damage.place(),
                                    Quoted.of(damage.key()) + " cannot be brought about where it is already",
                                    "Name another cause, or take it out.");
                } else if (before.add(state.key()) && before.size() == Damages.MOST_STATES + 1) {
                    fields.context()
                            .problems()
                            .add(
                                    damage.place(),
                                    Quoted.of(damage.key()) + " depends on more than " + Damages.MOST_STATES
                                            + " other causes, which cannot be reckoned exactly",
                                    "Keep those that matter most.");
                }
            }
        }
    }
}
