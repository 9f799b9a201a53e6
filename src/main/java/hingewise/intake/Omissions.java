package hingewise.intake;

import hingewise.rulebook.Choice;
import hingewise.rulebook.Moment;
import hingewise.rulebook.Observation;
import hingewise.rulebook.RuleBook;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What a listing leaves out.
 *
 * @param pictures what to look for in its pictures, a minute's work at most
 * @param silent questions with several answers that its text gives no part of
 */
public record Omissions(List<Observation> pictures, List<Choice> silent) {
    /** So many glances fit into a minute, at seven seconds each: common practice, no source. */
    private static final int GLANCES = 8;

    public Omissions {
        pictures = List.copyOf(pictures);
        silent = List.copyOf(silent);
    }

    /**
     * @param answered ids of observations that the text answers
     * @param family of the phone, if it is known
     */
    public static Omissions of(RuleBook rules, Set<String> answered, Optional<String> family) {
        return new Omissions(
                rules.observations().values().stream()
                        .filter(Observation::pictures)
                        .filter(o -> family.map(o.families()::contains).orElse(true))
                        .filter(o -> !answered.contains(o.id()))
                        .limit(GLANCES)
                        .toList(),
                rules.choices().values().stream()
                        .filter(c -> c.moments().contains(Moment.LISTING))
                        .filter(c -> family.map(c.families()::contains).orElse(true))
                        .filter(c -> c.answers().values().stream()
                                .flatMap(a -> a.settles().keySet().stream())
                                .noneMatch(answered::contains))
                        .toList());
    }
}
