package hingewise.intake;

import hingewise.rulebook.RuleBook;
import hingewise.rulebook.yaml.RuleBookReader;
import java.util.ArrayList;
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
 * Prints the weights of {@link Trust}: a logistic regression with a ridge of one, by Newton's steps. To be honest it needs
 * texts that the phrases were not written by, and examples gathered without them ({@link ExamplesGatherer}).
 */
final class TrustFit {
    private static final double RIDGE = 1;
    private static final int STEPS = 50;

    private TrustFit() {}

    /** @param arguments names of files with labelled texts */
    public static void main(String[] arguments) {
        RuleBook rules = RuleBookReader.readShipped().ruleBook().orElseThrow();
        ListingReader reader = new ListingReader(rules);
        List<double[]> features = new ArrayList<>();
        List<Double> right = new ArrayList<>();
        for (String name : arguments) {
            for (Labelled text : Labelled.read(name)) {
                Map<String, List<Found>> sides = reader.found(text.language(), text.text()).stream()
                        .filter(f -> rules.observations().containsKey(f.about()))
                        .collect(Collectors.groupingBy(f -> f.about() + (f.yes() ? "=yes" : "=no")));
                sides.forEach((label, agreeing) -> {
                    features.add(Trust.features(agreeing));
                    right.add(text.labels().contains(label) ? 1.0 : 0.0);
                });
            }
        }
        for (double w : fit(features, right).toArray()) {
            System.out.printf(Locale.ROOT, "%.2f%n", w);
        }
    }

    private static RealVector fit(List<double[]> features, List<Double> right) {
        int n = features.get(0).length;
        RealVector weights = new ArrayRealVector(n);
        for (int step = 0; step < STEPS; step++) {
            RealVector slope = weights.mapMultiply(-RIDGE);
            RealMatrix bend = new Array2DRowRealMatrix(n, n);
            for (int i = 0; i < n; i++) {
                bend.setEntry(i, i, RIDGE);
            }
            for (int i = 0; i < features.size(); i++) {
                RealVector x = new ArrayRealVector(features.get(i));
                double p = 1 / (1 + Math.exp(-x.dotProduct(weights)));
                slope = slope.add(x.mapMultiply(right.get(i) - p));
                bend = bend.add(x.outerProduct(x).scalarMultiply(p * (1 - p)));
            }
            weights = weights.add(new LUDecomposition(bend).getSolver().solve(slope));
        }
        return weights;
    }
}
