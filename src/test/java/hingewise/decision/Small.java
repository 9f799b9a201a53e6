package hingewise.decision;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;

/**
 * A problem small enough to be reckoned with exactly: the chance of every state is known, and so is what a sign shows in
 * it.
 *
 * @param belief chance of each state
 */
record Small(Problem problem, List<Sign> signs, double[] belief) {
    /**
     * A sign of noisy-OR kind.
     *
     * @param strengths by cause
     */
    record Sign(double leak, double[] strengths) {
        double chance(int state) {
            double no = 1 - leak;
            for (int c = 0; c < strengths.length; c++) {
                if ((state >>> c & 1) != 0) {
                    no *= 1 - strengths[c];
                }
            }
            return 1 - no;
        }
    }

    /**
     * Where a policy may be.
     *
     * @param belief chance of each state
     */
    record Place(double[] belief, long open, long done) {}

    /** Where an act leads with some chance, and what it costs on the way. */
    record Way(double chance, double cost, Place place) {}

    Place start() {
        return new Place(belief, 0, 0);
    }

    /** What comes of an act, by report. */
    List<Way> ways(Place place, int number) {
        Act act = problem.acts().get(number);
        long path = problem.path(act.gate());
        List<Integer> toOpen = new ArrayList<>();
        for (int g = act.gate(); g != Gate.NONE; g = problem.gates().get(g).parent()) {
            if ((place.open() >>> g & 1) == 0) {
                toOpen.add(0, g);
            }
        }
        double cost = act.cost() + problem.opening(path & ~place.open());
        Map<Integer, double[]> byReport = new TreeMap<>();
        double[] after = place.belief();
        for (int g : toOpen) {
            after = changed(after, List.of(), problem.gates().get(g).harms());
        }
        after = changed(after, act.cures(), act.harms());
        for (int report = 0; report < 1 << act.looks().size(); report++) {
            double[] some = new double[after.length];
            for (int x = 0; x < after.length; x++) {
                some[x] = after[x] * chance(act.looks(), report, x);
            }
            byReport.put(report, some);
        }
        List<Way> ways = new ArrayList<>();
        byReport.values().forEach(some -> {
            double total = 0;
            for (double p : some) {
                total += p;
            }
            if (total > 1e-12) {
                for (int x = 0; x < some.length; x++) {
                    some[x] /= total;
                }
                ways.add(new Way(total, cost, new Place(some, place.open() | path, place.done() | 1L << number)));
            }
        });
        return ways;
    }

    private double chance(List<Look> looks, int report, int state) {
        double chance = 1;
        for (int i = 0; i < looks.size(); i++) {
            Look look = looks.get(i);
            double shown = signs.get(look.sign()).chance(state);
            double yes = shown * look.ifShown() + (1 - shown) * look.ifNot();
            chance *= (report >>> i & 1) != 0 ? yes : 1 - yes;
        }
        return chance;
    }

    private static double[] changed(double[] belief, List<Cure> cures, List<Harm> harms) {
        double[] from = belief;
        for (int c = 0; c < 31 && 1 << c < belief.length; c++) {
            int cause = c;
            double cured = cures.stream()
                    .filter(k -> k.cause() == cause)
                    .mapToDouble(Cure::chance)
                    .sum();
            double harmed = harms.stream()
                    .filter(h -> h.cause() == cause)
                    .mapToDouble(Harm::chance)
                    .sum();
            double[] to = new double[from.length];
            for (int x = 0; x < from.length; x++) {
                boolean there = (x >>> c & 1) != 0;
                double turns = there ? cured : harmed;
                to[x ^ 1 << c] += from[x] * turns;
                to[x] += from[x] * (1 - turns);
            }
            from = to;
        }
        return from;
    }

    /** What a decision is expected to cost. */
    double loss(Place place, Ending ending) {
        double loss = problem.opening(ending.opens() & ~place.open());
        for (int x = 0; x < place.belief().length; x++) {
            loss += place.belief()[x] * problem.loss(ending, x);
        }
        return loss;
    }

    /** What the best decision is expected to cost. */
    double stop(Place place) {
        boolean opened = problem.endsUnopened(place.open());
        return problem.endings().stream()
                .filter(e -> !(opened && e.unopened()))
                .mapToDouble(e -> loss(place, e))
                .min()
                .orElseThrow();
    }

    /** Worlds drawn from what is known at a place. */
    Worlds worlds(Place place, int count, SplittableRandom random) {
        long[] present = new long[count];
        long[][] showing = new long[signs.size()][count];
        List<BitSet> otherwise = new ArrayList<>();
        for (int w = 0; w < count; w++) {
            double u = random.nextDouble();
            int x = 0;
            while (x < place.belief().length - 1 && u >= place.belief()[x]) {
                u -= place.belief()[x++];
            }
            present[w] = x;
        }
        for (int s = 0; s < signs.size(); s++) {
            BitSet leaks = new BitSet();
            for (int w = 0; w < count; w++) {
                leaks.set(w, random.nextDouble() < signs.get(s).leak());
                for (int c = 0; c < signs.get(s).strengths().length; c++) {
                    if (random.nextDouble() < signs.get(s).strengths()[c]) {
                        showing[s][w] |= 1L << c;
                    }
                }
            }
            otherwise.add(leaks);
        }
        return new Worlds(present, showing, otherwise);
    }
}
