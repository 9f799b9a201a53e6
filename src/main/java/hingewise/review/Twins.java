package hingewise.review;

import hingewise.rulebook.Cause;
import hingewise.rulebook.Confirmation;
import hingewise.rulebook.Observation;
import hingewise.rulebook.Raise;
import hingewise.rulebook.RuleBook;
import hingewise.rulebook.Sign;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Causes that no answer tells apart: whatever is seen, neither answer is more than twice as likely under one as under
 * the other, and no history raises one more than twice as often. A try that cures one of them only is named.
 */
final class Twins {
    /** Evidence of a likelihood ratio below two is worth no more than a hint. */
    private static final double FACTOR = 2;

    private final RuleBook rules;

    private Twins(RuleBook rules) {
        this.rules = rules;
    }

    static List<Remark> of(RuleBook rules) {
        Twins twins = new Twins(rules);
        List<Cause> causes = List.copyOf(rules.causes().values());
        List<Remark> remarks = new ArrayList<>();
        for (int i = 0; i < causes.size(); i++) {
            for (int j = i + 1; j < causes.size(); j++) {
                if (twins.alike(causes.get(i), causes.get(j))) {
                    remarks.add(twins.remark(causes.get(i), causes.get(j)));
                }
            }
        }
        return remarks;
    }

    private boolean alike(Cause a, Cause b) {
        return rules.families().values().stream()
                        .anyMatch(f -> f.components().contains(a.component())
                                && f.components().contains(b.component()))
                && alikeInSigns(a, b)
                && alikeInHistories(a, b);
    }

    private boolean alikeInSigns(Cause a, Cause b) {
        Map<String, Double> ofA = signs(a);
        Map<String, Double> ofB = signs(b);
        return both(ofA.keySet(), ofB.keySet()).stream().allMatch(o -> {
            double leak = leak(o);
            double noA = (1 - leak) * (1 - ofA.getOrDefault(o, 0.0));
            double noB = (1 - leak) * (1 - ofB.getOrDefault(o, 0.0));
            return near(noA, noB) && near(1 - noA, 1 - noB);
        });
    }

    /** Compared with the base rate, for a history that hardly adds to it tells nothing. */
    private static boolean alikeInHistories(Cause a, Cause b) {
        Map<String, Double> ofA = raises(a);
        Map<String, Double> ofB = raises(b);
        return both(ofA.keySet(), ofB.keySet()).stream()
                .allMatch(h -> near(growth(a, ofA.getOrDefault(h, 0.0)), growth(b, ofB.getOrDefault(h, 0.0))));
    }

    private static double growth(Cause cause, double strength) {
        double base = cause.baseRate().common();
        return (1 - (1 - base) * (1 - strength)) / base;
    }

    private static boolean near(double x, double y) {
        return x <= FACTOR * y && y <= FACTOR * x;
    }

    private static Map<String, Double> signs(Cause cause) {
        return cause.signs().stream().collect(Collectors.toMap(Sign::observation, Sign::strength));
    }

    private static Map<String, Double> raises(Cause cause) {
        return cause.raisedBy().stream().collect(Collectors.toMap(Raise::history, Raise::strength));
    }

    private double leak(String observation) {
        Observation o = rules.observations().get(observation);
        return o == null ? 0 : o.leak();
    }

    private static Set<String> both(Set<String> a, Set<String> b) {
        return Stream.concat(a.stream(), b.stream()).collect(Collectors.toCollection(TreeSet::new));
    }

    private Remark remark(Cause a, Cause b) {
        List<String> tries = rules.confirmations().values().stream()
                .filter(c -> !near(cure(c, a), cure(c, b)))
                .map(Confirmation::id)
                .toList();
        String only = tries.isEmpty() ? "nothing tells" : "only " + String.join(", ", tries) + " tells";
        String alike = a.component().equals(b.component()) ? " Both are of one component: perhaps they are one." : "";
        return new Remark(
                "causes",
                b.id(),
                only + " it from " + a.id(),
                "Name a sign that one of them shows and the other does not." + alike);
    }

    private static double cure(Confirmation c, Cause cause) {
        // Curing in fewer than one of a thousand is as good as not at all.
        return Math.max(.001, c.cures().getOrDefault(cause.id(), 0.0));
    }
}
