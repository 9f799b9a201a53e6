package hingewise.review;

import hingewise.rulebook.Choice;
import hingewise.rulebook.Question;
import hingewise.rulebook.RuleBook;
import hingewise.rulebook.RuleCase;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Rules that no case of the rule book tries. A cause must be expected in one case and excluded in another; an
 * observation must be answered both ways; a caution must show in one case and be absent from another.
 */
final class Unexercised {
    private final RuleBook rules;
    private final Set<String> yes = new HashSet<>();
    private final Set<String> no = new HashSet<>();
    private final Set<String> expected = new HashSet<>();
    private final Set<String> excluded = new HashSet<>();
    private final Set<String> shown = new HashSet<>();
    private final Set<String> silent = new HashSet<>();
    private final List<Remark> remarks = new ArrayList<>();

    private Unexercised(RuleBook rules) {
        this.rules = rules;
    }

    static List<Remark> of(RuleBook rules) {
        Unexercised review = new Unexercised(rules);
        rules.cases().forEach(review::take);
        review.judge();
        return review.remarks;
    }

    private void take(RuleCase c) {
        settled(rules, c).forEach((o, is) -> (is ? yes : no).add(o));
        expected.addAll(expectedBy(c));
        excluded.addAll(c.expect().notAmong());
        shown.addAll(c.expect().cautions());
        silent.addAll(c.expect().noCautions());
    }

    /** What a case says of observations, directly or by a choice. */
    static Map<String, Boolean> settled(RuleBook rules, RuleCase c) {
        Map<String, Boolean> settled = new HashMap<>();
        for (RuleCase.Seen s : c.seen()) {
            rules.question(s.about())
                    .map(Question::answers)
                    .map(a -> a.get(s.answer()))
                    .map(Choice.Answer::settles)
                    .ifPresent(settled::putAll);
        }
        return settled;
    }

    /** The causes that a case expects among the first. */
    static Set<String> expectedBy(RuleCase c) {
        Set<String> causes = new HashSet<>(c.expect().among());
        c.expect().leads().ifPresent(causes::add);
        return causes;
    }

    private void judge() {
        rules.causes().keySet().forEach(id -> {
            require(expected.contains(id), "causes", id, "expects it", "leads or among");
            require(excluded.contains(id), "causes", id, "excludes it", "not-among");
        });
        rules.observations().keySet().forEach(id -> {
            require(yes.contains(id), "observations", id, "answers it with yes", "seen");
            require(no.contains(id), "observations", id, "answers it with no", "seen");
        });
        rules.cautions().keySet().forEach(id -> {
            require(shown.contains(id), "cautions", id, "expects it", "cautions");
            require(silent.contains(id), "cautions", id, "excludes it", "no-cautions");
        });
    }

    private void require(boolean done, String section, String id, String what, String key) {
        if (!done) {
            remarks.add(new Remark(section, id, "no case " + what, "Add a case that names it under " + key + "."));
        }
    }
}
