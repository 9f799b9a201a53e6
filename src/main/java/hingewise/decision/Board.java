package hingewise.decision;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * A problem with the worlds it may be in: what deciding costs in a lot of them, and how an act splits it.
 *
 * <p>The decision for each half of a lot is chosen by the other half. Chosen by the worlds it is judged on, every act would
 * seem to save something, and the more so the finer it splits them.
 */
final class Board {
    /** Of an act that looks at many signs those are read that say most: more would split the worlds too finely. */
    private static final int MOST_LOOKS = 3;

    /** Share of the price of failure by which a cause weighs that costs nothing else. */
    private static final double UNPRICED = .1;

    final Problem problem;
    final Worlds worlds;
    final Dice dice;
    final States states;
    private final int[] drawn;
    private final List<List<Look>> looks = new ArrayList<>();
    private final Map<Long, Move>[] moves;
    private final boolean[] unopenedOnly;
    private final boolean[] carefree;
    private final Map<Long, double[]> openings = new HashMap<>();
    private final int endings;
    /** Sums of one half of a lot: of each decision, and last how many worlds there are. */
    private final int stride;

    @SuppressWarnings({"unchecked", "rawtypes"}) // an array of maps cannot be made otherwise
    Board(Problem problem, Worlds worlds, long seed) {
        this.problem = problem;
        this.worlds = worlds;
        this.dice = new Dice(problem, worlds.count(), seed);
        this.states = new States(problem);
        this.endings = problem.endings().size();
        this.stride = endings + 1;
        this.unopenedOnly = new boolean[endings];
        this.carefree = new boolean[endings];
        for (int e = 0; e < endings; e++) {
            unopenedOnly[e] = problem.endings().get(e).unopened();
            carefree[e] = problem.endings().get(e).covers() == -1L;
        }
        this.drawn = new int[worlds.count()];
        for (int w = 0; w < drawn.length; w++) {
            drawn[w] = states.number(worlds.present(w));
        }
        this.moves = new Map[problem.acts().size()];
        Lot all = all(0);
        for (int a = 0; a < moves.length; a++) {
            moves[a] = new HashMap<>();
            looks.add(mostTelling(all, a));
        }
    }

    /** The number of the state a world was drawn in. */
    int drawn(int world) {
        return drawn[world];
    }

    /** An act as it is done with these gates open. */
    Move move(int act, long open) {
        long toOpen = problem.path(problem.acts().get(act).gate()) & ~open;
        return moves[act].computeIfAbsent(toOpen, t -> new Move(this, act, looks.get(act), t));
    }

    private List<Look> mostTelling(Lot all, int act) {
        List<Look> own = problem.acts().get(act).looks();
        if (own.size() <= MOST_LOOKS) {
            return own;
        }
        double[] after = own.stream()
                .mapToDouble(l -> outcome(all, new Move(this, act, List.of(l), 0), Among.ALL)
                        .ends())
                .toArray();
        return IntStream.range(0, after.length)
                .boxed()
                .sorted(Comparator.comparingDouble(i -> (float) after[i]))
                .limit(MOST_LOOKS)
                .sorted()
                .map(own::get)
                .toList();
    }

    /** All worlds as they are drawn. */
    Lot all(long open) {
        int[] all = new int[drawn.length];
        for (int w = 0; w < all.length; w++) {
            all[w] = w;
        }
        return new Lot(all, drawn.clone(), all.length, open, 0);
    }

    /** What each decision costs, summed over the two halves of a lot, one after the other. */
    double[] losses(Lot lot) {
        double[] sums = new double[2 * stride];
        for (int i = 0; i < lot.size(); i++) {
            add(sums, lot.worlds()[i], lot.states()[i]);
        }
        return sums;
    }

    /** What deciding costs, summed over the worlds of a lot. */
    double end(Lot lot) {
        return end(lot, Among.ALL);
    }

    /** The same where only some decisions are weighed. */
    double end(Lot lot, Among among) {
        return least(losses(lot), lot.open(), among);
    }

    /** Which decisions are weighed. */
    enum Among {
        ALL,
        /**
         * Those after which a fault that is left is a concern. If one of the others is best now, it may take several cures
         * until another is, and none of them alone seems to save anything.
         */
        CONCERNED
    }

    /** Whether the best decision for a lot is one after which no fault is a concern, while there are others. */
    boolean leavesAllBehind(Lot lot) {
        for (boolean free : carefree) {
            if (!free) {
                return carefree[best(lot)];
            }
        }
        return false;
    }

    private double least(double[] sums, long open, Among among) {
        boolean opened = problem.endsUnopened(open);
        double[] opening = opening(open);
        int first = best(sums, 0, opening, opened, among);
        int second = best(sums, stride, opening, opened, among);
        if (first < 0 || second < 0) {
            return least(sums, open, Among.ALL);
        }
        return cost(sums, stride, first, opening) + cost(sums, 0, second, opening);
    }

    /** The decision that costs least in a lot, the first of equals. */
    int best(Lot lot) {
        double[] halves = losses(lot);
        double[] sums = new double[stride];
        for (int e = 0; e < stride; e++) {
            sums[e] = halves[e] + halves[e + stride];
        }
        return best(sums, 0, opening(lot.open()), problem.endsUnopened(lot.open()), Among.ALL);
    }

    /** What of opening these gates (one bit each) the best decision has to pay as well. */
    double paidAnyway(Lot lot, long opens) {
        return problem.opening(problem.endings().get(best(lot)).opens() & ~lot.open() & opens);
    }

    /** What each decision still has to pay for opening. */
    private double[] opening(long open) {
        return openings.computeIfAbsent(
                open,
                o -> problem.endings().stream()
                        .mapToDouble(e -> problem.opening(e.opens() & ~o))
                        .toArray());
    }

    private double cost(double[] sums, int from, int ending, double[] opening) {
        return sums[from + ending] + sums[from + endings] * opening[ending];
    }

    private int best(double[] sums, int from, double[] opening, boolean opened, Among among) {
        int best = -1;
        double least = Double.POSITIVE_INFINITY;
        for (int e = 0; e < endings; e++) {
            double cost = cost(sums, from, e, opening);
            boolean weighed = !(opened && unopenedOnly[e]) && !(among == Among.CONCERNED && carefree[e]);
            if (weighed && Saving.more(least, cost)) {
                best = e;
                least = cost;
            }
        }
        return best;
    }

    private void add(double[] sums, int world, int state) {
        double[] losses = states.losses(state);
        int from = (world & 1) * stride;
        for (int e = 0; e < losses.length; e++) {
            sums[from + e] += losses[e];
        }
        sums[from + endings]++;
    }

    /**
     * What comes of an act, summed over the worlds of a lot.
     *
     * @param ends what the best decisions after its reports cost
     * @param own what it costs itself
     * @param opening what opening for it costs
     */
    record Outcome(double ends, double own, double opening) {}

    Outcome outcome(Lot lot, Move move, Among among) {
        double[] none = {};
        double[][] sums = new double[move.reports()][];
        Arrays.fill(sums, none);
        int[] counts = new int[sums.length];
        for (int i = 0; i < lot.size(); i++) {
            long result = move.in(lot.worlds()[i], lot.states()[i]);
            int report = Move.report(result);
            if (counts[report]++ == 0) {
                sums[report] = new double[2 * stride];
            }
            add(sums[report], lot.worlds()[i], Move.state(result));
        }
        double ends = 0;
        double own = 0;
        double opening = 0;
        long open = lot.open() | move.opens();
        for (int r = 0; r < sums.length; r++) {
            if (counts[r] > 0) {
                ends += least(sums[r], r == Move.LEFT ? lot.open() : open, among);
                own += counts[r] * move.own(r);
                opening += r == Move.LEFT ? 0 : counts[r] * move.opening();
            }
        }
        return new Outcome(ends, own, opening);
    }

    /**
     * How much an act's looks tell of the counted causes, if it can be done: bits (Shannon's information) of each cause
     * times what leaving it costs, summed.
     */
    double information(Lot lot, Move move) {
        int causes = problem.leftover().size();
        int[][] there = new int[move.reports()][causes];
        int[] counts = new int[there.length];
        for (int i = 0; i < lot.size(); i++) {
            int report = Move.report(move.in(lot.worlds()[i], lot.states()[i]));
            counts[report]++;
            long state = states.state(lot.states()[i]) & problem.counted();
            for (long rest = state; rest != 0; rest &= rest - 1) {
                there[report][Long.numberOfTrailingZeros(rest)]++;
            }
        }
        double total = 0;
        for (int c = 0; c < causes; c++) {
            int cause = c;
            int all =
                    IntStream.range(1, counts.length).map(r -> there[r][cause]).sum();
            double bits = (lot.size() - counts[Move.LEFT]) * bits(all, lot.size() - counts[Move.LEFT]);
            for (int r = 1; r < counts.length; r++) {
                bits -= counts[r] * bits(there[r][c], counts[r]);
            }
            total += bits / lot.size() * (problem.leftover().get(c) + UNPRICED * problem.failure());
        }
        return total;
    }

    private static double bits(double yes, double of) {
        return yes <= 0 || yes >= of
                ? 0
                : -(yes * Math.log(yes / of) + (of - yes) * Math.log1p(-yes / of)) / of / Math.log(2);
    }

    /** The lots that an act makes of one, by report; those that cannot be are empty. */
    Lot[] split(Lot lot, int act, Move move) {
        long[] results = new long[lot.size()];
        int[] counts = new int[move.reports()];
        for (int i = 0; i < results.length; i++) {
            results[i] = move.in(lot.worlds()[i], lot.states()[i]);
            counts[Move.report(results[i])]++;
        }
        Lot[] lots = new Lot[counts.length];
        for (int r = 0; r < lots.length; r++) {
            long open = r == Move.LEFT ? lot.open() : lot.open() | move.opens();
            lots[r] = new Lot(new int[counts[r]], new int[counts[r]], counts[r], open, lot.done() | 1L << act);
        }
        Arrays.fill(counts, 0);
        for (int i = 0; i < results.length; i++) {
            int report = Move.report(results[i]);
            int place = counts[report]++;
            lots[report].worlds()[place] = lot.worlds()[i];
            lots[report].states()[place] = Move.state(results[i]);
        }
        return lots;
    }
}
