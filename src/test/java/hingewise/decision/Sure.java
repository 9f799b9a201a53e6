package hingewise.decision;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Builds small textbook problems; sign 0 says whether anything is the matter and never errs. */
final class Sure {
    /** So dear that nobody would leave a fault. */
    static final double NEVER = 100_000;

    private final int causes;
    private final double[] belief;
    private final List<Small.Sign> signs = new ArrayList<>();
    private final List<Gate> gates = new ArrayList<>();
    private final List<Act> acts = new ArrayList<>();
    private final List<Ending> endings = new ArrayList<>();
    private double failure = NEVER;

    private Sure(double[] belief) {
        this.belief = belief;
        this.causes = Integer.numberOfTrailingZeros(belief.length);
        double[] all = new double[causes];
        Arrays.fill(all, 1);
        signs.add(new Small.Sign(0, all));
        endings.add(new Ending("leave", 0, 0, 0, false));
    }

    /** One fault. */
    static Sure one(double... p) {
        double[] belief = new double[1 << p.length];
        for (int c = 0; c < p.length; c++) {
            belief[1 << c] = p[c];
        }
        return new Sure(belief);
    }

    /** Independent faults, at least one. */
    static Sure several(double... p) {
        double[] belief = new double[1 << p.length];
        double total = 0;
        for (int x = 1; x < belief.length; x++) {
            belief[x] = 1;
            for (int c = 0; c < p.length; c++) {
                belief[x] *= (x >>> c & 1) != 0 ? p[c] : 1 - p[c];
            }
            total += belief[x];
        }
        for (int x = 1; x < belief.length; x++) {
            belief[x] /= total;
        }
        return new Sure(belief);
    }

    Sure failure(double price) {
        failure = price;
        return this;
    }

    Sure gate(double cost) {
        gates.add(new Gate(Gate.NONE, cost, List.of(), false));
        return this;
    }

    /** A try, after which it is seen whether all is well. */
    Sure attempt(String id, double cost, int gate, Cure... cures) {
        return attempt(id, cost, gate, List.of(), cures);
    }

    Sure attempt(String id, double cost, int gate, List<Harm> harms, Cure... cures) {
        Look works = new Look(0, 1, 0, acts.size());
        acts.add(new Act(id, cost, gate, List.of(), List.of(works), List.of(cures), harms));
        return this;
    }

    /** The same for a try that surely cures one cause and lies behind nothing. */
    Sure repair(String id, double cost, int cause) {
        return attempt(id, cost, Gate.NONE, new Cure(cause, 1));
    }

    /** A look at a sign of its own. */
    Sure test(String id, double cost, double... strengths) {
        signs.add(new Small.Sign(0, strengths));
        Look look = new Look(signs.size() - 1, 1, 0, acts.size());
        acts.add(new Act(id, cost, Gate.NONE, List.of(), List.of(look), List.of(), List.of()));
        return this;
    }

    Sure ending(Ending ending) {
        endings.add(ending);
        return this;
    }

    Small small() {
        List<Double> leftover = new ArrayList<>();
        for (int c = 0; c < causes; c++) {
            leftover.add(0.0);
        }
        return new Small(
                new Problem((1L << causes) - 1, failure, leftover, signs.size(), gates, acts, endings), signs, belief);
    }
}
