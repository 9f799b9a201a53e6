package hingewise.review;

import hingewise.rulebook.Cause;
import hingewise.rulebook.Caution;
import hingewise.rulebook.Component;
import hingewise.rulebook.Confirmation;
import hingewise.rulebook.History;
import hingewise.rulebook.Observation;
import hingewise.rulebook.RuleBook;
import hingewise.rulebook.Sign;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Causes that nothing cures or confirms, and observations that say nothing. */
final class DeadEnds {
    private DeadEnds() {}

    static List<Remark> of(RuleBook rules) {
        List<Remark> remarks = new ArrayList<>();
        rules.causes().values().forEach(c -> cause(rules, c, remarks));
        Set<String> shown = Stream.concat(
                        rules.causes().values().stream().map(Cause::signs),
                        rules.histories().values().stream().map(History::signs))
                .flatMap(List::stream)
                .map(Sign::observation)
                .collect(Collectors.toSet());
        Set<String> used = otherwiseUsed(rules);
        rules.observations().keySet().stream()
                .filter(o -> !shown.contains(o) && !used.contains(o))
                .map(o -> new Remark(
                        "observations",
                        o,
                        "no cause or history shows \"" + o + "\", so that its answer says nothing",
                        "Name it among the signs of what shows it, or take it out."))
                .forEach(remarks::add);
        return remarks;
    }

    /** Answers that other questions, steps or cautions wait for are worth having whatever they say of causes. */
    private static Set<String> otherwiseUsed(RuleBook rules) {
        return Stream.of(
                        rules.observations().values().stream()
                                .map(Observation::needs)
                                .map(n -> n.keySet()),
                        rules.confirmations().values().stream()
                                .map(Confirmation::needs)
                                .map(n -> n.keySet()),
                        rules.cautions().values().stream().map(Caution::observations))
                .flatMap(s -> s)
                .flatMap(Set::stream)
                .collect(Collectors.toSet());
    }

    private static void cause(RuleBook rules, Cause cause, List<Remark> remarks) {
        boolean renewed =
                rules.parts().values().stream().anyMatch(p -> p.renews().contains(cause.component()));
        boolean cured =
                rules.confirmations().values().stream().anyMatch(c -> c.cures().containsKey(cause.id()));
        boolean incurable = Optional.ofNullable(rules.components().get(cause.component()))
                .filter(Component::incurable)
                .isPresent();
        if (!renewed && !cured && !incurable) {
            remarks.add(new Remark(
                    "causes",
                    cause.id(),
                    "nothing cures it: no part renews its component \"" + cause.component() + "\" and no try cures it",
                    "Add the part or the try, or write \"incurable: true\" beside the component if the phone can only be"
                            + " returned or broken for parts."));
        }
        Set<String> signs = cause.signs().stream().map(Sign::observation).collect(Collectors.toSet());
        boolean confirmed = rules.confirmations().values().stream()
                .anyMatch(c -> c.cures().containsKey(cause.id())
                        || c.settles().stream().anyMatch(signs::contains));
        if (!confirmed) {
            remarks.add(new Remark(
                    "causes",
                    cause.id(),
                    "no confirmation bears on it",
                    "Add a question, check or try that settles one of its signs or cures it."));
        }
    }
}
