package hingewise.simulation;

import hingewise.planning.Decision;
import hingewise.simulation.Comparison.Mean;
import hingewise.simulation.Comparison.Row;
import hingewise.simulation.Comparison.Sample;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Sums up what became of the phones. */
record Summing(List<Sample> samples) {
    /** @param begun phones that were to be followed */
    Comparison comparison(int begun) {
        int cases = samples.stream().mapToInt(s -> s.knowing().size()).sum();
        List<Double> plan = byStart(Manner.PLAN, Outcome::cost);
        List<Double> knowing = samples.stream()
                .map(s -> s.knowing().stream()
                        .mapToDouble(Double::doubleValue)
                        .average()
                        .orElse(0))
                .toList();
        return new Comparison(
                cases,
                samples.size(),
                begun - cases,
                Arrays.stream(Manner.values()).map(m -> row(m, plan)).toList(),
                Mean.of(knowing),
                Mean.of(differences(plan, knowing)),
                endings());
    }

    private Map<Decision.Kind, Double> endings() {
        List<Outcome> all =
                samples.stream().flatMap(s -> of(s, Manner.PLAN).stream()).toList();
        return all.stream()
                .collect(Collectors.groupingBy(Outcome::end, Collectors.summingDouble(o -> 1.0 / all.size())));
    }

    private Row row(Manner manner, List<Double> plan) {
        List<Double> cost = byStart(manner, Outcome::cost);
        return new Row(
                manner,
                Mean.of(cost),
                Mean.of(differences(cost, plan)),
                mean(manner, Outcome::minutes),
                mean(manner, Outcome::days),
                mean(manner, Outcome::fitted),
                mean(manner, Outcome::needless),
                mean(manner, Outcome::openings),
                mean(manner, Outcome::inVain),
                mean(manner, o -> o.left() ? 1 : 0));
    }

    private static List<Double> differences(List<Double> a, List<Double> b) {
        return IntStream.range(0, a.size()).mapToObj(i -> a.get(i) - b.get(i)).toList();
    }

    private double mean(Manner manner, ToDoubleFunction<Outcome> what) {
        return Mean.of(byStart(manner, what)).mean();
    }

    private List<Double> byStart(Manner manner, ToDoubleFunction<Outcome> what) {
        return samples.stream()
                .map(s -> of(s, manner).stream().mapToDouble(what).average().orElse(0))
                .toList();
    }

    private static List<Outcome> of(Sample sample, Manner manner) {
        return Objects.requireNonNull(sample.outcomes().get(manner));
    }
}
