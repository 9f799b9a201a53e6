package hingewise.decision;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

/** The least expected cost that any policy can have, by dynamic programming over everything that can be known. */
final class ExactSolver {
    private record Key(long belief, long beliefToo, long open, long done) {}

    private final Small small;
    private final Map<Key, Double> known = new HashMap<>();

    ExactSolver(Small small) {
        this.small = small;
    }

    double optimum() {
        return optimum(small.start());
    }

    double optimum(Small.Place place) {
        Key key = key(place);
        Double before = known.get(key);
        if (before != null) {
            return before;
        }
        double best = small.stop(place);
        for (int a = 0; a < small.problem().acts().size(); a++) {
            if ((place.done() >>> a & 1) == 0) {
                double cost = 0;
                for (Small.Way way : small.ways(place, a)) {
                    cost += way.chance() * way.cost();
                    if (cost >= best) {
                        break;
                    }
                    cost += way.chance() * optimum(way.place());
                }
                best = Math.min(best, cost);
            }
        }
        known.put(key, best);
        return best;
    }

    /** Two hashes of the belief rounded: places reached on two ways are one. */
    private static Key key(Small.Place place) {
        long[] rounded = new long[place.belief().length];
        for (int x = 0; x < rounded.length; x++) {
            rounded[x] = Math.round(place.belief()[x] * 1e9);
        }
        long other = 1;
        for (long r : rounded) {
            other = other * 0x9E3779B97F4A7C15L + r;
        }
        return new Key(Arrays.hashCode(rounded), other, place.open(), place.done());
    }
}
