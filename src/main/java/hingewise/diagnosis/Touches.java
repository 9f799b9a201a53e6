package hingewise.diagnosis;

import hingewise.casefile.Meanwhile;
import hingewise.casefile.Opened;
import hingewise.casefile.Repair;
import hingewise.casefile.Try;
import hingewise.rulebook.Access;
import hingewise.rulebook.Cause;
import hingewise.rulebook.Confirmation;
import hingewise.rulebook.Damages;
import hingewise.rulebook.Grade;
import hingewise.rulebook.Lapse;
import hingewise.rulebook.Part;
import hingewise.rulebook.RuleBook;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What entries that change a phone may do to its causes. */
final class Touches {
    private final RuleBook rules;
    private final String family;
    private final Map<String, Cause> causes;

    Touches(RuleBook rules, String family) {
        this.rules = rules;
        this.family = family;
        this.causes = rules.causesOf(family).stream()
                .collect(Collectors.toMap(Cause::id, c -> c, (a, b) -> a, LinkedHashMap::new));
    }

    Touch of(Try entry, Confirmation confirmation) {
        return new Touch(entry, confirmation.label(), changes(confirmation.cures(), confirmation.damages()));
    }

    /**
     * One touch for each step, since what a step may damage can hang on what the one before it did.
     *
     * @param steps the steps of opening that were still to do
     */
    List<Touch> of(Opened entry, List<Access> steps) {
        String label = Optional.ofNullable(rules.access().get(entry.access()))
                .map(Access::label)
                .orElse(entry.access());
        return steps.stream()
                .map(step -> new Touch(entry, label, changes(Map.of(), step.damages())))
                .toList();
    }

    Touch of(Meanwhile entry, Lapse lapse) {
        return new Touch(entry, lapse.label(), changes(lapse.clears(), Damages.always(lapse.brings())));
    }

    /**
     * A fitted part may be bad. Which fault of its component a bad part has is split as the base rates are, so that all
     * of them together are about as likely as a bad part is.
     */
    Touch of(Repair entry, List<Part> parts, Grade grade) {
        Set<String> renewed = parts.stream().flatMap(p -> p.renews().stream()).collect(Collectors.toSet());
        Map<String, Double> total = causes.values().stream()
                .collect(Collectors.groupingBy(Cause::component, Collectors.summingDouble(this::weight)));
        Map<String, Turn> turns = new LinkedHashMap<>();
        for (Cause cause : causes.values()) {
            if (renewed.contains(cause.component())) {
                double share = weight(cause) / total.getOrDefault(cause.component(), 1.0);
                turns.put(cause.id(), new Turn.Renewal(grade.bad() * share));
            }
        }
        return new Touch(entry, parts.stream().map(Part::label).collect(Collectors.joining(", ")), turns);
    }

    private double weight(Cause cause) {
        return cause.baseRate().in(family);
    }

    /** What a phone of this family cannot have is neither changed nor makes anything worse. */
    private Map<String, Turn> changes(Map<String, Double> cures, Damages damages) {
        Map<String, Turn> turns = new LinkedHashMap<>();
        Stream.concat(cures.keySet().stream(), damages.causes().stream())
                .filter(causes::containsKey)
                .forEach(cause -> turns.put(
                        cause,
                        new Turn.Change(
                                cures.getOrDefault(cause, 0.0),
                                damages.to(cause).among(causes.keySet()))));
        return turns;
    }
}
