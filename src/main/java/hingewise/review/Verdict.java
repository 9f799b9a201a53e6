package hingewise.review;

import hingewise.assessment.Assessment;
import hingewise.diagnosis.RankedCause;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What a person would take from an assessment.
 *
 * @param first the likeliest cause
 * @param three the three likeliest, in whatever order
 * @param firstTry what to confirm or try first; empty when nothing is worth it
 * @param orders whether any part is to be ordered now
 */
record Verdict(String first, Set<String> three, Optional<String> firstTry, boolean orders) {
    private static final int THREE = 3;

    Verdict {
        three = Set.copyOf(three);
    }

    static Verdict of(Assessment assessment) {
        List<RankedCause> causes = assessment.diagnosis().causes();
        return new Verdict(
                causes.isEmpty() ? "" : causes.get(0).cause().id(),
                causes.stream().limit(THREE).map(c -> c.cause().id()).collect(Collectors.toSet()),
                assessment.tryFirst().stream()
                        .findFirst()
                        .map(s -> s.confirmation().id()),
                !assessment.parts().order().isEmpty());
    }
}
