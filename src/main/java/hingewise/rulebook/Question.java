package hingewise.rulebook;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;

/**
 * Anything that can be asked of a phone, an observation or a choice, in one form.
 *
 * @param id of the observation or choice
 * @param answers what can be answered, in the order to show it, and what each answer settles
 */
public record Question(
        String id,
        String label,
        String question,
        String look,
        Set<Moment> moments,
        Set<String> families,
        Map<String, Choice.Answer> answers,
        Grounds grounds) {
    public static final String YES = "yes";
    public static final String NO = "no";

    static Question of(Observation o) {
        Map<String, Choice.Answer> answers = new LinkedHashMap<>();
        answers.put(YES, new Choice.Answer("Yes", Map.of(o.id(), true)));
        answers.put(NO, new Choice.Answer("No", Map.of(o.id(), false)));
        return new Question(
                o.id(),
                o.label(),
                o.question(),
                o.look(),
                o.moments(),
                o.families(),
                Ordered.copyOf(answers),
                o.grounds());
    }

    static Question of(Choice c) {
        return new Question(
                c.id(), c.label(), c.question(), c.look(), c.moments(), c.families(), c.answers(), c.grounds());
    }
}
