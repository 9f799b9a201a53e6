package hingewise.decision;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** A problem with the worlds it may be in: what deciding costs in a lot of them, and how an act splits it. */
final class Board {
    /** Of an act that looks at many signs those are read that say most: more would split the worlds too finely. */
    private static final int MOST_LOOKS = 3;

    /** Share of the price of failure by which a cause weighs that costs nothing else. */
    private static final double UNPRICED = .1;

    final Problem problem;
    final Worlds worlds;
    final Dice dice;
    final States states;
    final Situations situations;
    private final List<List<Look>> looks = new ArrayList<>();
    /** By act, one for each number of gates that were still to be opened for it. */
    private final List<List<Move>> moves = new ArrayList<>();
    /** The gates (one bit each) before each act. */
    private final long[] paths;

    final Choices choices;
    private final Map<Lot, Lot> lots = new HashMap<>();
    private final int figures;
    /** Room to work in: what comes of an act in each situation of a lot, in their order. */
    private final int[] results;

    Board(Problem problem, Worlds worlds, long seed) {
        this.problem = problem;
        this.worlds = worlds;
        this.dice = new Dice(problem, worlds.count(), seed);
        this.states = new States(problem);
        this.paths =
                problem.acts().stream().mapToLong(a -> problem.path(a.gate())).toArray();
        this.choices = new Choices(problem);
        this.figures = problem.endings().size() + 1;
        this.results = new int[worlds.count()];
        this.situations = new Situations(IntStream.range(0, worlds.count())
                .map(w -> states.number(worlds.present(w)))
                .toArray());
        Lot all = all(0);
        for (int a = 0; a < problem.acts().size(); a++) {
            moves.add(new ArrayList<>());
            looks.add(mostTelling(all, a));
        }
    }

    /** An act as it is done in a lot. */
    Move move(int act, Lot lot) {
        long toOpen = paths[act] & ~lot.open();
        List<Move> known = moves.get(act);
        for (Move move : known) {
            if (move.opens() == toOpen) {
                return move;
            }
        }
        Move move = new Move(this, act, looks.get(act), toOpen);
        known.add(move);
        return move;
    }

    private List<Look> mostTelling(Lot all, int act) {
        List<Look> own = problem.acts().get(act).looks();
        if (own.size() <= MOST_LOOKS) {
            return own;
        }
        double[] after = own.stream()
                .mapToDouble(l -> reckoned(all, new Move(this, act, List.of(l), 0), Choice.Among.ALL)
                        .ends())
                .toArray();
        return IntStream.range(0, after.length)
                .boxed()
                .sorted(Comparator.comparingDouble(i -> Saving.coarse(after[i])))
                .limit(MOST_LOOKS)
                .sorted()
                .map(own::get)
                .toList();
    }

    /** All worlds as they are drawn; every other one belongs to the same half. */
    Lot all(long open) {
        int half = (worlds.count() + 1) / 2;
        int[] in = IntStream.range(0, worlds.count())
                .map(i -> i < half ? 2 * i : 2 * (i - half) + 1)
                .toArray();
        return lot(new Lot(in, half, open, 0));
    }

    private Lot lot(Lot lot) {
        Lot before = lots.putIfAbsent(lot, lot);
        return before == null ? lot : before;
    }

    /** What each decision costs in a lot; not to be changed. */
    private Sums losses(Lot lot) {
        Sums known = lot.sums;
        if (known == null) {
            known = Sums.none(figures);
            for (int i = 0; i < lot.size(); i++) {
                Sums.add(known.half(lot.half(i)), states.losses(situations.state(lot.situation(i))));
            }
            lot.sums = known;
        }
        return known;
    }

    /** What deciding costs, summed over the worlds of a lot. */
    double end(Lot lot) {
        if (Double.isNaN(lot.end)) {
            lot.end = end(lot, Choice.Among.ALL);
        }
        return lot.end;
    }

    /** The same where only some decisions are weighed. */
    double end(Lot lot, Choice.Among among) {
        return choices.with(lot.open()).least(losses(lot), among);
    }

    /** Whether the best decision for a lot is one after which no fault is a concern, while there are others. */
    boolean leavesAllBehind(Lot lot) {
        return Choice.carefree(problem, best(lot))
                && IntStream.range(0, problem.endings().size()).anyMatch(e -> !Choice.carefree(problem, e));
    }

    /** The decision that costs least in a lot, the first of equals. */
    int best(Lot lot) {
        return choices.with(lot.open()).best(losses(lot).all(), Choice.Among.ALL);
    }

    /** What of opening these gates (one bit each) the best decision has to pay as well. */
    double paidAnyway(Lot lot, long opens) {
        return problem.opening(problem.endings().get(best(lot)).opens() & ~lot.open() & opens);
    }

    /**
     * What comes of an act, summed over the worlds of a lot.
     *
     * @param ends what the best decisions after its reports cost
     * @param own what it costs itself
     * @param opening what opening for it costs
     */
    record Outcome(double ends, double own, double opening) {}

    Outcome outcome(Lot lot, int act, Choice.Among among) {
        if (among != Choice.Among.ALL) {
            return reckoned(lot, move(act, lot), among);
        }
        if (lot.outcomes.length == 0) {
            lot.outcomes = new Outcome[moves.size()];
        }
        Outcome known = lot.outcomes[act];
        if (known == null) {
            known = reckoned(lot, move(act, lot), among);
            lot.outcomes[act] = known;
        }
        return known;
    }

    private Outcome reckoned(Lot lot, Move move, Choice.Among among) {
        int[] counts = counts(lot, move);
        Sums[] sums = sums(lot, counts);
        Choice after = choices.with(lot.open() | move.opens());
        double ends = 0;
        double own = 0;
        double opening = 0;
        for (int r = 0; r < counts.length; r++) {
            if (counts[r] > 0) {
                ends += (r == Move.LEFT ? choices.with(lot.open()) : after).least(sums[r], among);
                own += counts[r] * move.own(r);
                opening += r == Move.LEFT ? 0 : counts[r] * move.opening();
            }
        }
        return new Outcome(ends, own, opening);
    }

    /** How many worlds of a lot report what. What comes of the move in each of them is left in {@link #results}. */
    private int[] counts(Lot lot, Move move) {
        int[] known = move.results();
        int[] counts = new int[move.reports()];
        for (int i = 0; i < lot.size(); i++) {
            int s = lot.situation(i);
            int result = known[s] == 0 ? move.reckoned(s) : known[s];
            results[i] = result;
            counts[Move.report(result)]++;
        }
        return counts;
    }

    /**
     * What each decision costs after a move, by report, from its {@link #results}; anything for reports that none makes.
     * What it costs before is known, so that those worlds need not be looked at that report what most do and stay as they
     * are.
     */
    private Sums[] sums(Lot lot, int[] counts) {
        int usual = 0;
        for (int r = 1; r < counts.length; r++) {
            usual = counts[r] > counts[usual] ? r : usual;
        }
        Sums rest = losses(lot).copy();
        Sums[] sums = new Sums[counts.length];
        for (int r = 0; r < counts.length; r++) {
            sums[r] = r == usual || counts[r] == 0 ? rest : Sums.none(figures);
        }
        for (int i = 0; i < lot.size(); i++) {
            int result = results[i];
            int report = Move.report(result);
            if (Move.changes(result)) {
                double[] to = rest.half(lot.half(i));
                Sums.add(to, states.losses(Move.state(result)));
                Sums.takeOff(to, states.losses(situations.state(lot.situation(i))));
            }
            if (report != usual) {
                Sums.add(sums[report].half(lot.half(i)), states.losses(Move.state(result)));
            }
        }
        for (Sums other : sums) {
            if (other != rest) {
                rest.takeOff(other);
            }
        }
        return sums;
    }

    /**
     * How much an act's looks tell of the counted causes, if it can be done: bits (Shannon's information) of each cause
     * times what leaving it costs, summed.
     */
    double information(Lot lot, int act) {
        Move move = move(act, lot);
        int causes = problem.leftover().size();
        int[][] there = new int[move.reports()][causes];
        int[] counts = new int[there.length];
        for (int i = 0; i < lot.size(); i++) {
            int report = Move.report(move.result(lot.situation(i)));
            counts[report]++;
            long state = states.state(situations.state(lot.situation(i))) & problem.counted();
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
    Lot[] split(Lot lot, int act) {
        if (lot.splits.length == 0) {
            lot.splits = new Lot[moves.size()][];
        }
        Lot[] known = lot.splits[act];
        if (known == null) {
            known = splitting(lot, act);
            lot.splits[act] = known;
        }
        return known;
    }

    private Lot[] splitting(Lot lot, int act) {
        Move move = move(act, lot);
        int[] counts = counts(lot, move);
        Sums[] sums = sums(lot, counts);
        int[][] parts = new int[counts.length][];
        for (int r = 0; r < parts.length; r++) {
            parts[r] = new int[counts[r]];
        }
        int[] filled = new int[counts.length];
        int[] halves = filled;
        for (int i = 0; i < lot.size(); i++) {
            if (lot.half(i) == 1 && halves == filled) {
                halves = filled.clone();
            }
            int result = results[i];
            int report = Move.report(result);
            int s = lot.situation(i);
            parts[report][filled[report]++] =
                    Move.changes(result) ? situations.number(situations.world(s), Move.state(result)) : s;
        }
        Lot[] made = new Lot[parts.length];
        for (int r = 0; r < made.length; r++) {
            long open = r == Move.LEFT ? lot.open() : lot.open() | move.opens();
            made[r] = lot(new Lot(parts[r], halves[r], open, lot.done() | 1L << act));
            made[r].sums = made[r].sums == null && counts[r] > 0 ? sums[r] : made[r].sums;
        }
        return made;
    }
}
