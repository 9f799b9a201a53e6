package hingewise.decision;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Looks ahead in the worlds of a board. Simple orders are followed to their end, by saving for its cost and by saving less
 * cost, each stopping where stopping turns out best; what they cost can be had, so the better of them bounds the optimum
 * from above (a rollout: Bertsekas, Tsitsiklis and Wu 1997, Journal of Heuristics 3:245-262). All figures are sums over
 * the worlds of a lot.
 */
final class Search {
    /** How many acts are tried after each report of one that is followed further. */
    private static final int BREADTH = 3;
    /** How far the simple orders are followed. */
    private static final int LENGTH = 8;
    /** A smaller share of what a case costs may well be chance. */
    private static final double LEAST = 1e-3;
    /** A lot of fewer worlds says too little to choose by. */
    private static final int FEWEST = 12;

    final Board board;
    private final long candidates;
    private final double scale;

    /**
     * @param candidates acts that are looked at (one bit each)
     * @param scale about what a case costs
     */
    Search(Board board, long candidates, double scale) {
        this.board = board;
        this.candidates = candidates;
        this.scale = scale;
    }

    /** What following the best of the simple orders costs. */
    double simply(Lot lot) {
        return simply(lot, board.end(lot));
    }

    /** The same when an act is done first. */
    double after(Lot lot, int act) {
        return afterwards(lot, act, this::simply);
    }

    /** The same where after each report every promising act is tried as the next. */
    double further(Lot lot, int act) {
        return afterwards(lot, act, (next, end) -> {
            double best = simply(next, end);
            if (next.size() >= FEWEST) {
                for (int second : promising(savings(next, end))) {
                    best = Math.min(best, after(next, second));
                }
            }
            return best;
        });
    }

    /** What each act that can still be done saves and costs in a lot. */
    List<Saving> savings(Lot lot, double stop) {
        return savings(lot, stop, Choice.Among.ALL);
    }

    /** The same where only some decisions are weighed, of which the best costs {@code stop}. */
    List<Saving> savings(Lot lot, double stop, Choice.Among among) {
        List<Saving> savings = new ArrayList<>();
        for (long rest = candidates & ~lot.done(); rest != 0; rest &= rest - 1) {
            int a = Long.numberOfTrailingZeros(rest);
            Board.Outcome outcome = board.outcome(lot, a, among);
            savings.add(new Saving(
                    a,
                    LEAST * scale * lot.size(),
                    Saving.saved(stop, outcome.ends()),
                    outcome.own(),
                    outcome.opening(),
                    board.move(a, lot).opens()));
        }
        return savings;
    }

    private double simply(Lot lot, double stop) {
        if (lot.size() < FEWEST || (candidates & ~lot.done()) == 0) {
            return stop;
        }
        List<Saving> savings = savings(lot, stop);
        double best = stop;
        for (Order order : Order.values()) {
            best = Math.min(best, follow(lot, stop, savings, order, LENGTH));
        }
        if (board.leavesAllBehind(lot)) {
            best = Math.min(best, towards(lot, stop, LENGTH));
        }
        return best;
    }

    /**
     * The same where another act is the next after each report, if that is better. The simple orders leave out what saves
     * little in the few worlds of a report, although it saves as much after this act as before it.
     */
    double afterBoth(Lot lot, int act, int second) {
        return afterwards(lot, act, (next, end) -> {
            double alone = simply(next, end);
            return next.size() < FEWEST ? alone : Math.min(alone, after(next, second));
        });
    }

    /** As if none of the decisions after which no fault is a concern could be taken, yet stopping with them where that is best. */
    private double towards(Lot lot, double stop, int length) {
        int act = Order.NET.first(
                board.problem, savings(lot, board.end(lot, Choice.Among.CONCERNED), Choice.Among.CONCERNED));
        return act == Order.NOTHING
                ? stop
                : done(
                        lot,
                        stop,
                        act,
                        (next, end) -> length > 1 && next.size() >= FEWEST ? towards(next, end, length - 1) : end);
    }

    private double follow(Lot lot, double stop, List<Saving> savings, Order order, int length) {
        int act = order.first(board.problem, savings);
        if (act == Order.NOTHING) {
            return stop;
        }
        return done(
                lot,
                stop,
                act,
                (next, end) -> length > 1 && next.size() >= FEWEST && end > 0
                        ? follow(next, end, savings(next, end), order, length - 1)
                        : end);
    }

    /** What going on costs in a lot in which deciding costs so much. */
    private interface GoingOn {
        double cost(Lot lot, double stop);
    }

    /** What doing an act costs, and going on from each of its reports; or stopping, if that is less. */
    private double done(Lot lot, double stop, int act, GoingOn on) {
        return Math.min(stop, afterwards(lot, act, on));
    }

    /** What doing an act costs, and going on from each of its reports. */
    private double afterwards(Lot lot, int act, GoingOn on) {
        Move move = board.move(act, lot);
        Lot[] lots = board.split(lot, act);
        double cost = 0;
        for (int r = 0; r < lots.length; r++) {
            if (lots[r].size() > 0) {
                cost += lots[r].size() * move.cost(r) + on.cost(lots[r], board.end(lots[r]));
            }
        }
        return cost;
    }

    /** The acts that come first in any of the orders. */
    private List<Integer> promising(List<Saving> savings) {
        List<Saving> left = new ArrayList<>(savings);
        Set<Integer> picked = new LinkedHashSet<>();
        boolean found = true;
        while (found && picked.size() < BREADTH) {
            found = false;
            for (Order order : Order.values()) {
                int act = order.first(board.problem, left);
                if (act != Order.NOTHING) {
                    picked.add(act);
                    left.removeIf(s -> s.act() == act);
                    found = true;
                }
            }
        }
        return List.copyOf(picked);
    }
}
