package hingewise.assessment;

import hingewise.diagnosis.Reading;
import hingewise.diagnosis.Readings;
import hingewise.rulebook.EvidenceKind;
import hingewise.rulebook.Moment;
import hingewise.rulebook.Observation;
import hingewise.rulebook.RuleBook;
import hingewise.rulebook.Sign;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * After a repair every symptom that was recorded is asked again, and so is the round of functions. What only tells of
 * the phone's past, or can no longer be seen as far as it is open, is not.
 */
public final class FunctionRound {
    private FunctionRound() {}

    /** What of it nobody has looked at since the last repair; nothing when nothing was repaired. */
    public static List<Observation> left(RuleBook rules, String family, Readings readings) {
        Optional<List<Reading>> since = readings.sinceRepair();
        if (since.isEmpty()) {
            return List.of();
        }
        Set<String> symptoms = readings.used().stream()
                .filter(Reading::yes)
                .map(r -> r.observation().id())
                .collect(Collectors.toSet());
        Set<String> tested = since.get().stream()
                .filter(r -> r.entry().kind() == EvidenceKind.LOOK || r.entry().kind() == EvidenceKind.METER)
                .map(r -> r.observation().id())
                .collect(Collectors.toSet());
        Set<String> shown = rules.causesOf(family).stream()
                .flatMap(c -> c.signs().stream())
                .map(Sign::observation)
                .collect(Collectors.toSet());
        Map<String, Boolean> latest = readings.latest();
        return rules.observationsOf(family).stream()
                .filter(o -> o.moments().contains(Moment.AFTER_REPAIR)
                        || symptoms.contains(o.id()) && shown.contains(o.id()) && onTheDesk(o, readings))
                .filter(o -> !tested.contains(o.id()))
                .filter(o -> o.askable(latest))
                .toList();
    }

    private static boolean onTheDesk(Observation observation, Readings readings) {
        return !observation.moments().equals(Set.of(Moment.LISTING))
                && observation
                        .access()
                        .filter(a -> !readings.open().contains(a))
                        .isEmpty();
    }
}
