package hingewise.intake;

import hingewise.intake.store.Readers;
import hingewise.rulebook.RuleBook;
import hingewise.rulebook.Trust.Mark;
import hingewise.rulebook.yaml.RuleBookReader;
import hingewise.rulebook.yaml.RuleFiles;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/**
 * Prints the weights of trust for each language, as the rule book writes them: a logistic regression with a ridge of one,
 * by Newton's steps, over what is found in the texts kept for it. Neither phrases nor examples are written by those
 * texts, else found claims would look better than they are.
 */
final class TrustFit {
    private static final double RIDGE = 1;
    private static final int STEPS = 30;

    private TrustFit() {}

    public static void main(String[] arguments) {
        RuleBook rules = RuleBookReader.readShipped().ruleBook().orElseThrow();
        ListingReader reader = Readers.of(RuleFiles.SHIPPED, rules, () -> {});
        for (String language : rules.languages().keySet()) {
            List<RealVector> marks = new ArrayList<>();
            List<Double> right = new ArrayList<>();
            for (Labelled text : Labelled.forTrust()) {
                if (text.language().equals(language)) {
                    add(rules, reader, text, marks, right);
                }
            }
            RealVector weights = fit(marks, right);
            System.out.println(language + ":");
            for (Mark mark : Mark.values()) {
                System.out.printf(Locale.ROOT, "      %s: %.2f%n", mark.id(), weights.getEntry(mark.ordinal()));
            }
        }
    }

    private static void add(
            RuleBook rules, ListingReader reader, Labelled text, List<RealVector> marks, List<Double> right) {
        Map<String, List<Found>> sides = reader.found(text.language(), text.text()).stream()
                .filter(f -> rules.observations().containsKey(f.about()))
                .collect(Collectors.groupingBy(f -> f.about() + (f.yes() ? "=yes" : "=no")));
        sides.forEach((label, agreeing) -> {
            Map<Mark, Double> of = new EnumMap<>(Marks.of(agreeing, sides.getOrDefault(opposite(label), List.of())));
            marks.add(
                    new ArrayRealVector(of.values().stream().mapToDouble(v -> v).toArray()));
            right.add(text.labels().contains(label) ? 1.0 : 0.0);
        });
    }

    private static String opposite(String label) {
        String about = label.substring(0, label.lastIndexOf('='));
        return about + (label.endsWith("=yes") ? "=no" : "=yes");
    }

    private static RealVector fit(List<RealVector> marks, List<Double> right) {
        int n = Mark.values().length;
        RealVector weights = new ArrayRealVector(n);
        for (int step = 0; step < STEPS; step++) {
            RealVector slope = weights.mapMultiply(-RIDGE);
            RealMatrix bend = new Array2DRowRealMatrix(n, n);
            for (int i = 0; i < n; i++) {
                bend.setEntry(i, i, RIDGE);
            }
            for (int i = 0; i < marks.size(); i++) {
                RealVector x = marks.get(i);
                double p = 1 / (1 + Math.exp(-x.dotProduct(weights)));
                slope = slope.add(x.mapMultiply(right.get(i) - p));
                bend = bend.add(x.outerProduct(x).scalarMultiply(p * (1 - p)));
            }
            weights = weights.add(new LUDecomposition(bend).getSolver().solve(slope));
        }
        return weights;
    }
}
