package hingewise.bench;

import hingewise.inference.Evidence;
import hingewise.inference.Hard;
import hingewise.inference.Link;
import hingewise.inference.Network;
import hingewise.inference.NoisyOr;
import hingewise.inference.Solver;
import hingewise.inference.Variable;
import hingewise.oracle.RandomNetworks;
import hingewise.oracle.RandomNetworks.Layers;
import hingewise.oracle.RandomNetworks.Puzzle;
import hingewise.oracle.RandomNetworks.Shape;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A network to be solved for all its causes, as our engine takes it and as the libraries take it.
 *
 * @param puzzle what our engine is given, whole
 * @param pruned what the libraries are given: no unobserved leaves, certain negatives folded into the causes, since
 *     otherwise none of them finishes
 * @param evidence the findings left to weigh in the pruned network
 */
public record Workload(Puzzle puzzle, Network pruned, Evidence evidence) {
    /** The kinds of network measured. */
    public enum Kind {
        TWO_LAYERS_CERTAIN(Shape.RANDOM, 0, false),
        TWO_LAYERS_WEIGHTED(Shape.RANDOM, 0, true),
        CLUSTERED_WITH_HISTORIES_WEIGHTED(Shape.CLUSTERED, 6, true);

        private final Shape shape;
        private final int histories;
        private final boolean weighted;

        Kind(Shape shape, int histories, boolean weighted) {
            this.shape = shape;
            this.histories = histories;
            this.weighted = weighted;
        }
    }

    /** A seeded workload with twenty negative findings. */
    public static Workload of(Kind kind, int causes, int positives, long seed) {
        Puzzle puzzle = RandomNetworks.layered(
                new Layers(
                        kind.shape,
                        kind.histories,
                        causes,
                        causes * 3 / 2 + positives,
                        3,
                        6,
                        positives,
                        20,
                        kind.weighted,
                        1e-4),
                seed);
        Solver solver = Solver.of(puzzle.network(), puzzle.evidence(), Set.copyOf(puzzle.causes()));
        Set<String> folded = new HashSet<>();
        puzzle.evidence().findings().forEach((name, finding) -> {
            if (finding instanceof Hard hard && !hard.yes()) {
                folded.add(name);
            }
        });
        Evidence evidence = puzzle.evidence();
        Map<String, Double> silent = new HashMap<>();
        for (String name : folded) {
            evidence = evidence.without(name);
            for (Link link : ((NoisyOr) puzzle.network().variable(name).mechanism()).links()) {
                silent.merge(link.parent(), 1 - link.strength(), (a, b) -> a * b);
            }
        }
        List<Variable> variables = new ArrayList<>();
        for (String name : solver.kept()) {
            if (!folded.contains(name)) {
                variables.add(puzzle.network().variable(name));
            }
        }
        for (Map.Entry<String, Double> entry : silent.entrySet()) {
            evidence = evidence.weighted(entry.getKey(), entry.getValue(), 1);
        }
        return new Workload(puzzle, Network.of(variables), evidence);
    }
}
