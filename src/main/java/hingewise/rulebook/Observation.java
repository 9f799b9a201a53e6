package hingewise.rulebook;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * A yes/no question about the phone; "yes" is the side that speaks for a fault.
 *
 * @param label a few words, for lists
 * @param question what is asked
 * @param look how to look
 * @param whenYes a plain statement for notes and reasons when the answer is yes
 * @param whenNo the same when the answer is no
 * @param moments when asking makes sense
 * @param needs other observations and the answers they must have before this can be asked
 * @param askedIf other observations and the answers without which nobody asks; unlike {@code needs} they take nothing from
 *     an answer that is recorded
 * @param access the access state it needs; empty when the phone stays closed
 * @param leak how often it is seen with no known cause, in 1e-5–.5
 * @param fitful chance that it shows at one look although it is there; empty when it always does
 * @param repeat chance that a repeated look by the same person repeats the reading instead of making it afresh
 * @param reliability how far each kind of evidence is believed, complete over all kinds
 * @param families families it is asked of
 * @param pictures whether the pictures of a listing show it or avoid it
 * @param phrases how sellers write about it
 */
public record Observation(
        String id,
        String label,
        String question,
        String look,
        String whenYes,
        String whenNo,
        Set<Moment> moments,
        Map<String, Boolean> needs,
        Map<String, Boolean> askedIf,
        Optional<String> access,
        double leak,
        OptionalDouble fitful,
        double repeat,
        Map<EvidenceKind, Reliability> reliability,
        Set<String> families,
        boolean pictures,
        Phrases phrases,
        Grounds grounds) {
    public Observation {
        moments = Set.copyOf(moments);
        needs = Map.copyOf(needs);
        askedIf = Ordered.copyOf(askedIf);
        reliability = Map.copyOf(reliability);
        families = Set.copyOf(families);
    }

    /** Whether the recorded answers allow it to be asked; what is not recorded forbids nothing. */
    public boolean askable(Map<String, Boolean> answers) {
        return allowed(needs, answers);
    }

    static boolean allowed(Map<String, Boolean> needs, Map<String, Boolean> answers) {
        return needs.entrySet().stream()
                .allMatch(n -> n.getValue().equals(answers.getOrDefault(n.getKey(), n.getValue())));
    }
}
