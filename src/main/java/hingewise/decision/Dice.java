package hingewise.decision;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SplittableRandom;

/**
 * Every throw of chance that acts may depend on, thrown once for each world: what a try would cure, what it would harm,
 * how a look would be read. All policies are compared on the same throws.
 */
final class Dice {
    /** Keeps the throws apart from worlds that were drawn with the same seed. */
    private static final long OWN = 0x6A09E667F3BCC909L;

    private final long[][] cured;
    private final List<List<BitSet>> actHarms = new ArrayList<>();
    private final List<List<BitSet>> gateHarms = new ArrayList<>();
    private final Map<Look, BitSet> ifShown = new HashMap<>();
    private final Map<Look, BitSet> ifNot = new HashMap<>();
    private final SplittableRandom random;
    private final int worlds;

    Dice(Problem problem, int worlds, long seed) {
        this.worlds = worlds;
        this.random = new SplittableRandom(seed ^ OWN);
        cured = new long[problem.acts().size()][];
        for (int a = 0; a < cured.length; a++) {
            Act act = problem.acts().get(a);
            cured[a] = cures(act);
            actHarms.add(act.harms().stream().map(h -> thrown(h.chance())).toList());
            act.looks().forEach(this::read);
        }
        for (Gate gate : problem.gates()) {
            gateHarms.add(gate.harms().stream().map(h -> thrown(h.chance())).toList());
        }
        // Last, so that what must be asked first changes no other throw.
        problem.acts().forEach(a -> a.needs().forEach(n -> read(n.look())));
    }

    private long[] cures(Act act) {
        if (act.cures().isEmpty()) {
            return new long[0];
        }
        long[] cures = new long[worlds];
        for (Cure cure : act.cures()) {
            for (int w = 0; w < worlds; w++) {
                if (random.nextDouble() < cure.chance()) {
                    cures[w] |= 1L << cure.cause();
                }
            }
        }
        return cures;
    }

    private void read(Look look) {
        ifShown.computeIfAbsent(look, l -> thrown(l.ifShown()));
        ifNot.computeIfAbsent(look, l -> thrown(l.ifNot()));
    }

    private BitSet thrown(double chance) {
        BitSet set = new BitSet(worlds);
        for (int w = 0; w < worlds; w++) {
            if (random.nextDouble() < chance) {
                set.set(w);
            }
        }
        return set;
    }

    /** The state after an act's cures and harms. */
    long after(int number, Act act, int world, long state) {
        long next = cured[number].length == 0 ? state : state & ~cured[number][world];
        return act.harms().isEmpty() ? next : harmed(act.harms(), actHarms.get(number), world, state, next);
    }

    /** The state after a gate was opened. */
    long after(int number, Gate gate, int world, long state) {
        return gate.harms().isEmpty() ? state : harmed(gate.harms(), gateHarms.get(number), world, state, state);
    }

    /** What was there and is cured does not come back in the same act. */
    private static long harmed(List<Harm> harms, List<BitSet> thrown, int world, long before, long after) {
        long next = after;
        for (int h = 0; h < thrown.size(); h++) {
            if (thrown.get(h).get(world)) {
                Harm harm = harms.get(h);
                if (harm.given() == 0 || (before & harm.given()) != 0) {
                    next |= 1L << harm.cause() & ~before;
                }
            }
        }
        return next;
    }

    /** The worlds in which a look reports a sign that shows. */
    BitSet ifShown(Look look) {
        return Objects.requireNonNull(ifShown.get(look));
    }

    /** The worlds in which a look reports a sign that does not show. */
    BitSet ifNot(Look look) {
        return Objects.requireNonNull(ifNot.get(look));
    }
}
