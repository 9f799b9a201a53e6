package hingewise.planning;

import hingewise.diagnosis.Diagnosis;
import hingewise.diagnosis.RankedCause;
import hingewise.rulebook.Cause;
import hingewise.rulebook.Sign;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What a case is about. While there is a complaint only causes that may show it count; without one, all do.
 *
 * @param complaints ids of observations reported as so that a cause can show
 */
public record Concern(Set<String> complaints) {
    public Concern {
        complaints = Set.copyOf(complaints);
    }

    /** By what stands reported and was touched by nothing since. */
    public static Concern of(Diagnosis diagnosis) {
        Set<String> shown = diagnosis.causes().stream()
                .flatMap(r -> r.cause().signs().stream())
                .map(Sign::observation)
                .collect(Collectors.toSet());
        return new Concern(diagnosis.readings().latest().entrySet().stream()
                .filter(Map.Entry::getValue)
                .map(Map.Entry::getKey)
                .filter(shown::contains)
                .collect(Collectors.toSet()));
    }

    /** Whether a cause counts. */
    public boolean counts(Cause cause) {
        return complaints.isEmpty() || cause.signs().stream().anyMatch(s -> complaints.contains(s.observation()));
    }

    /** The causes that count, likeliest first. */
    List<Cause> likeliest(Diagnosis diagnosis, int most) {
        return diagnosis.causes().stream()
                .map(RankedCause::cause)
                .filter(this::counts)
                .limit(most)
                .toList();
    }
}
