package hingewise.rulebook;

import java.util.Map;
import java.util.Set;

/**
 * A question with many answers: each answer settles some observations.
 *
 * @param answers by answer id, in the order to show them
 */
public record Choice(
        String id,
        String label,
        String question,
        String look,
        Set<Moment> moments,
        Map<String, Answer> answers,
        Set<String> families,
        Grounds grounds) {
    public Choice {
        moments = Set.copyOf(moments);
        answers = Ordered.copyOf(answers);
        families = Set.copyOf(families);
    }

    /**
     * One answer of the question.
     *
     * @param settles observations and what this answer says of each
     */
    public record Answer(String label, Map<String, Boolean> settles) {
        public Answer {
            settles = Ordered.copyOf(settles);
        }
    }
}
