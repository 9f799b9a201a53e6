package hingewise.review;

import hingewise.rulebook.Access;
import hingewise.rulebook.Confirmation;
import hingewise.rulebook.RuleBook;
import java.util.List;

/** What must be answered before opening, where no check of the closed phone answers it: nobody is told to look. */
final class BeforeOpening {
    private BeforeOpening() {}

    static List<Remark> of(RuleBook rules) {
        return rules.access().values().stream()
                .flatMap(a -> a.needs().keySet().stream()
                        .filter(o -> rules.confirmations().values().stream().noneMatch(c -> answers(c, o, a)))
                        .map(o -> new Remark(
                                "access",
                                a.id(),
                                "it needs \"" + o + "\", which no check of the closed phone answers",
                                "Add a check without access that settles it, in every family that is opened so.")))
                .toList();
    }

    private static boolean answers(Confirmation c, String observation, Access access) {
        return c.kind() == Confirmation.Kind.CHECK
                && c.settles().contains(observation)
                && c.access().isEmpty()
                && c.damages().isEmpty()
                && c.families().containsAll(access.families());
    }
}
