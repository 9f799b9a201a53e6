package hingewise.planning;

import hingewise.decision.Problem;
import hingewise.diagnosis.Diagnosis;
import hingewise.diagnosis.RankedCause;
import hingewise.rulebook.Cause;
import hingewise.rulebook.Sign;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Which causes count. */
final class Counted {
    private Counted() {}

    /** While there is a complaint only causes that may show it, likeliest first. */
    static List<Cause> causes(Diagnosis diagnosis) {
        Set<String> shown = diagnosis.causes().stream()
                .flatMap(r -> r.cause().signs().stream())
                .map(Sign::observation)
                .collect(Collectors.toSet());
        Set<String> complaints = diagnosis.readings().latest().entrySet().stream()
                .filter(Map.Entry::getValue)
                .map(Map.Entry::getKey)
                .filter(shown::contains)
                .collect(Collectors.toSet());
        return diagnosis.causes().stream()
                .map(RankedCause::cause)
                .filter(c ->
                        complaints.isEmpty() || c.signs().stream().anyMatch(s -> complaints.contains(s.observation())))
                .limit(Problem.MOST_CAUSES)
                .toList();
    }
}
