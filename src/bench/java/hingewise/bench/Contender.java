package hingewise.bench;

import hingewise.inference.Network;
import hingewise.inference.Solver;
import hingewise.oracle.GraphmodOracle;
import hingewise.oracle.WekaOracle;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Supplier;

/** Who solves a workload: all posteriors of the causes. */
public enum Contender {
    /** Everything from the whole network: pruning, search for an order, compiling, solving. */
    OURS,
    /** Junction tree, the network already built, noisy-ORs as full tables. */
    WEKA_TABLES,
    /** The same with noisy-ORs divorced as our engine does it. */
    WEKA_DIVORCED,
    /** Elimination, the network already built, noisy-ORs as full tables. */
    GRAPHMOD_TABLES,
    /** The same with noisy-ORs divorced as our engine does it. */
    GRAPHMOD_DIVORCED;

    /** The work to be timed, with everything that is not timed already done. */
    Supplier<Object> prepare(Workload workload) {
        Set<String> causes = Set.copyOf(workload.puzzle().causes());
        Set<String> asked = new TreeSet<>(causes);
        return switch (this) {
            case OURS -> () -> Solver.of(
                            workload.puzzle().network(), workload.puzzle().evidence(), causes)
                    .solve(workload.puzzle().evidence())
                    .probabilities();
            case WEKA_TABLES -> new WekaOracle(workload.pruned(), workload.evidence())::solve;
            case WEKA_DIVORCED -> new WekaOracle(divorced(workload), workload.evidence())::solve;
            case GRAPHMOD_TABLES -> {
                GraphmodOracle oracle = new GraphmodOracle(workload.pruned(), workload.evidence());
                yield () -> oracle.solve(asked);
            }
            case GRAPHMOD_DIVORCED -> {
                GraphmodOracle oracle = new GraphmodOracle(divorced(workload), workload.evidence());
                yield () -> oracle.solve(asked);
            }
        };
    }

    private static Network divorced(Workload workload) {
        return Solver.of(workload.pruned(), workload.evidence(), Set.copyOf(workload.puzzle().causes()))
                .expanded();
    }
}
