package hingewise.intake;

import static org.assertj.core.api.Assertions.assertThat;

import hingewise.intake.Classifier.Example;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.math3.analysis.MultivariateFunction;
import org.apache.commons.math3.analysis.MultivariateVectorFunction;
import org.apache.commons.math3.optim.InitialGuess;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.SimpleValueChecker;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.nonlinear.scalar.ObjectiveFunction;
import org.apache.commons.math3.optim.nonlinear.scalar.ObjectiveFunctionGradient;
import org.apache.commons.math3.optim.nonlinear.scalar.gradient.NonLinearConjugateGradientOptimizer;
import org.junit.jupiter.api.Test;

class ClassifierTest {
    private static final long SEED = 7;

    private final List<Example> hinges = Stream.of(
                    new Example(Set.of("hinge", "creaks"), Set.of("noise")),
                    new Example(Set.of("creaks", "loudly"), Set.of("noise")),
                    new Example(Set.of("hinge", "heavy"), Set.of("stiff")),
                    new Example(Set.of("heavy", "going"), Set.of("stiff")),
                    new Example(Set.of("heavy", "creaks"), Set.of("noise", "stiff")),
                    new Example(Set.of("cash", "only"), Set.of()),
                    new Example(Set.of("cash", "please"), Set.of()))
            .flatMap(e -> Stream.generate(() -> e).limit(5))
            .toList();

    @Test
    void aClaimIsLikelierWhereItsWordsStand() {
        Classifier classifier = Classifier.taught(hinges.stream(), SEED);
        assertThat(classifier.chances(Set.of("creaks")).get("noise"))
                .isGreaterThan(classifier.chances(Set.of("heavy")).get("noise"))
                .isGreaterThan(classifier.chances(Set.of("cash")).get("noise"));
    }

    @Test
    void aSentenceMayMakeTwoClaims() {
        Classifier classifier = Classifier.taught(hinges.stream(), SEED);
        assertThat(classifier.chances(Set.of("creaks", "heavy")))
                .hasSize(2)
                .allSatisfy((claim, chance) -> assertThat(chance)
                        .as(claim)
                        .isGreaterThan(classifier.chances(Set.of("hinge")).get(claim)));
    }

    @Test
    void wordsThatNoExampleHasTellNothing() {
        Classifier classifier = Classifier.taught(hinges.stream(), SEED);
        assertThat(classifier.chances(Set.of("zebra"))).isEqualTo(classifier.chances(Set.of()));
    }

    @Test
    void theSameExamplesTeachTheSame() {
        assertThat(Classifier.taught(hinges.stream(), SEED).chances(Set.of("hinge", "creaks")))
                .isEqualTo(Classifier.taught(hinges.stream(), SEED).chances(Set.of("hinge", "creaks")));
    }

    @Test
    void withoutExamplesNothingIsClaimed() {
        assertThat(Classifier.taught(Stream.of(), SEED).chances(Set.of("hinge")))
                .isEmpty();
    }

    @Test
    void aWordOfTooFewExamplesTellsNothing() {
        List<Example> more = new ArrayList<>(hinges);
        more.add(new Example(Set.of("squeals"), Set.of("noise")));
        Classifier classifier = Classifier.taught(more.stream(), SEED);
        assertThat(classifier.chances(Set.of("squeals"))).isEqualTo(classifier.chances(Set.of()));
    }

    /**
     * Against commons-math: the weights that make the examples likeliest (logistic regression, Cox 1958, JRSS B 20:215-242),
     * found by conjugate gradients. On a claim that is drawn from known weights, so that hidden units are not needed, the two
     * seldom take different sides.
     */
    @Test
    void itTakesTheSideOfTheLikeliestWeights() {
        Random random = new Random(SEED);
        double[] truth = random.doubles(20, -3, 3).toArray();
        List<Example> taught = drawn(truth, 2000, random);
        List<Example> asked = drawn(truth, 500, random);
        Classifier classifier = Classifier.taught(taught.stream(), SEED);
        double[] likeliest = likeliest(taught, truth.length);
        long agreed = asked.stream()
                .filter(e -> classifier.chances(e.features()).getOrDefault("made", 0.0) >= .5
                        == odds(likeliest, e.features()) >= 0)
                .count();
        assertThat(agreed / 500.0).as("seed %d", SEED).isGreaterThan(.9);
    }

    private static double odds(double[] weights, Set<String> features) {
        return weights[weights.length - 1]
                + features.stream()
                        .mapToDouble(f -> weights[Integer.parseInt(f.substring(1))])
                        .sum();
    }

    private static double[] likeliest(List<Example> examples, int features) {
        MultivariateFunction unlikeliness = w -> examples.stream()
                .mapToDouble(e -> Math.log1p(Math.exp((e.claims().isEmpty() ? 1 : -1) * odds(w, e.features()))))
                .sum();
        MultivariateVectorFunction slope = w -> {
            double[] sum = new double[features + 1];
            for (Example e : examples) {
                double error =
                        1 / (1 + Math.exp(-odds(w, e.features()))) - (e.claims().isEmpty() ? 0 : 1);
                e.features().forEach(f -> sum[Integer.parseInt(f.substring(1))] += error);
                sum[features] += error;
            }
            return sum;
        };
        return new NonLinearConjugateGradientOptimizer(
                        NonLinearConjugateGradientOptimizer.Formula.POLAK_RIBIERE, new SimpleValueChecker(1e-9, 1e-9))
                .optimize(
                        new ObjectiveFunction(unlikeliness),
                        new ObjectiveFunctionGradient(slope),
                        GoalType.MINIMIZE,
                        new InitialGuess(new double[features + 1]),
                        new MaxEval(10_000))
                .getPoint();
    }

    private static List<Example> drawn(double[] truth, int size, Random random) {
        List<Example> examples = new ArrayList<>();
        for (int i = 0; i < size; i++) {
            Set<String> features = IntStream.range(0, truth.length)
                    .filter(f -> random.nextInt(4) == 0)
                    .mapToObj(f -> "f" + f)
                    .collect(Collectors.toCollection(TreeSet::new));
            double odds = features.stream()
                    .mapToDouble(f -> truth[Integer.parseInt(f.substring(1))])
                    .sum();
            boolean made = random.nextDouble() < 1 / (1 + Math.exp(-odds));
            examples.add(new Example(features, made ? Set.of("made") : Set.of()));
        }
        return examples;
    }
}
