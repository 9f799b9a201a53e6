package hingewise.report.handbook;

import hingewise.rulebook.Cause;
import hingewise.rulebook.Observation;
import hingewise.rulebook.RuleBook;
import hingewise.rulebook.Sign;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Causes that look alike, and what tells them apart. Two causes are the more alike the smaller the angle between their
 * rows of signs. What tells them apart is the answer whose likelihood ratio is farthest from one.
 */
final class Neighbours {
    private static final int MOST = 3;
    /** Below this cosine the two share too little to be confused. */
    private static final double ALIKE = .3;
    /** An answer at least this many times as likely under one as under the other is worth telling. */
    private static final double TELLING = 2;

    /** Beyond this the exact ratio says nothing more. */
    private static final int MANY = 100;

    private final RuleBook rules;
    private final Refs refs;

    Neighbours(RuleBook rules, Refs refs) {
        this.rules = rules;
        this.refs = refs;
    }

    List<Item> of(Cause cause) {
        Map<String, Double> own = signs(cause);
        record Near(Cause cause, double cosine) {}
        return rules.causes().values().stream()
                .filter(c -> !c.id().equals(cause.id()) && together(c, cause))
                .map(c -> new Near(c, cosine(own, signs(c))))
                .filter(n -> n.cosine() >= ALIKE)
                .sorted(Comparator.comparingDouble(Near::cosine)
                        .reversed()
                        .thenComparing(n -> n.cause().id()))
                .limit(MOST)
                .map(n -> Item.of("", refs.cause(n.cause().id()), telling(cause, n.cause())))
                .toList();
    }

    private boolean together(Cause a, Cause b) {
        return rules.families().values().stream()
                .anyMatch(f ->
                        f.components().contains(a.component()) && f.components().contains(b.component()));
    }

    private static Map<String, Double> signs(Cause cause) {
        return cause.signs().stream().collect(Collectors.toMap(Sign::observation, Sign::strength));
    }

    private static double cosine(Map<String, Double> a, Map<String, Double> b) {
        double product = a.entrySet().stream()
                .mapToDouble(e -> e.getValue() * b.getOrDefault(e.getKey(), 0.0))
                .sum();
        return product == 0 ? 0 : product / (length(a) * length(b));
    }

    private static double length(Map<String, Double> row) {
        return Math.sqrt(row.values().stream().mapToDouble(x -> x * x).sum());
    }

    /** An answer and how many times as likely it is under this cause as under the other. */
    private record Answer(String words, double ratio) {
        double weight() {
            return Math.abs(Math.log(ratio));
        }
    }

    private String telling(Cause cause, Cause other) {
        Map<String, Double> own = signs(cause);
        Map<String, Double> others = signs(other);
        List<Answer> answers = new ArrayList<>();
        for (String id : Stream.concat(own.keySet().stream(), others.keySet().stream())
                .collect(Collectors.toCollection(TreeSet::new))) {
            Observation o = rules.observations().get(id);
            if (o != null) {
                double no = (1 - own.getOrDefault(id, 0.0)) * (1 - o.leak());
                double noOther = (1 - others.getOrDefault(id, 0.0)) * (1 - o.leak());
                answers.add(new Answer(o.whenYes(), (1 - no) / (1 - noOther)));
                answers.add(new Answer(o.whenNo(), no / noOther));
            }
        }
        String told = Stream.of(
                        best(answers, a -> a.ratio() >= TELLING).map(a -> said("This one, rather: ", a)),
                        best(answers, a -> a.ratio() <= 1 / TELLING).map(a -> said("The other, rather: ", a)))
                .flatMap(Optional::stream)
                .collect(Collectors.joining(" "));
        return told.isEmpty() ? "No single answer tells them apart." : told;
    }

    private static Optional<Answer> best(List<Answer> answers, Predicate<Answer> side) {
        return answers.stream().filter(side).max(Comparator.comparingDouble(Answer::weight));
    }

    private static String said(String lead, Answer answer) {
        String bare = answer.words().endsWith(".")
                ? answer.words().substring(0, answer.words().length() - 1)
                : answer.words();
        return lead + bare + times(answer.ratio()) + ".";
    }

    private static String times(double ratio) {
        double times = Math.max(ratio, 1 / ratio);
        return times >= MANY
                ? " (over " + MANY + " times as likely)"
                : String.format(Locale.ROOT, " (%.0f times as likely)", times);
    }
}
