package hingewise.decision;

import java.util.Arrays;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One act with certain gates still to be opened for it, and what it does in each situation, which is kept: the same is
 * looked at again and again. A result is packed into one number: the state after it, the report, whether the state changed.
 */
final class Move {
    /** The report of an act that was left because a need was not met. */
    static final int LEFT = 0;
    /** Where the number of the state begins in a result. */
    private static final int STATE = 5;

    /** Of at most three looks, see {@link #reports}. */
    private static final int MOST_REPORTS = 15;

    private final Board board;
    private final int number;
    private final Act act;
    private final long toOpen;
    private final int[] opens;
    private final Reader[] needs;
    private final Reader[] looks;
    private final double asking;
    private final double opening;
    /** By situation; 0 if it is not reckoned yet. */
    private int[] results = {};

    /** A look, what its sign shows by and the worlds in which it reports. */
    private record Reader(int sign, boolean answer, long[] showing, BitSet otherwise, BitSet ifShown, BitSet ifNot) {
        boolean reports(int world, long state) {
            boolean shows = (state & showing[world]) != 0 || otherwise.get(world);
            return (shows ? ifShown : ifNot).get(world);
        }
    }

    Move(Board board, int number, List<Look> looks, long toOpen) {
        this.board = board;
        this.number = number;
        this.act = board.problem.acts().get(number);
        this.toOpen = toOpen;
        this.opens = outermostFirst(toOpen, act.gate());
        this.needs = act.needs().stream().map(n -> reader(n.look(), n.answer())).toArray(Reader[]::new);
        this.looks = looks.stream().map(l -> reader(l, true)).toArray(Reader[]::new);
        this.asking = act.needs().stream().mapToDouble(Need::cost).sum();
        this.opening = board.problem.opening(toOpen);
    }

    private Reader reader(Look look, boolean answer) {
        return new Reader(
                look.sign(),
                answer,
                board.worlds.showing(look.sign()),
                board.worlds.otherwise(look.sign()),
                board.dice.ifShown(look),
                board.dice.ifNot(look));
    }

    private int[] outermostFirst(long gates, int gate) {
        int[] order = new int[Long.bitCount(gates)];
        int place = order.length;
        for (int g = gate; g != Gate.NONE; g = board.problem.gates().get(g).parent()) {
            if ((gates >>> g & 1) != 0) {
                order[--place] = g;
            }
        }
        return order;
    }

    /** What comes of it in a situation. */
    int result(int situation) {
        int known = results()[situation];
        return known == 0 ? reckoned(situation) : known;
    }

    /** What comes of it in each situation that occurs by now; 0 for what is not {@link #reckoned} yet. */
    int[] results() {
        if (results.length < board.situations.count()) {
            results = Arrays.copyOf(results, Math.max(board.situations.count(), 2 * results.length));
        }
        return results;
    }

    /** What is reported in a result. */
    static int report(int result) {
        return result >>> 1 & MOST_REPORTS;
    }

    /** Whether the state after it is not the state before it. */
    static boolean changes(int result) {
        return (result & 1) != 0;
    }

    /** The number of the state after it. */
    static int state(int result) {
        return (result >>> STATE) - 1;
    }

    /** What comes of it in a situation, found out for the first time. */
    int reckoned(int situation) {
        int world = board.situations.world(situation);
        int before = board.situations.state(situation);
        long x = board.states.state(before);
        long y = x;
        int report = LEFT;
        if (isDone(world, x)) {
            y = after(world, x);
            report = report(world, y);
        }
        int after = y == x ? before : board.states.number(y);
        int result = after + 1 << STATE | report << 1 | (y == x ? 0 : 1);
        results[situation] = result;
        return result;
    }

    private boolean isDone(int world, long state) {
        for (Reader need : needs) {
            if (need.reports(world, state) != need.answer()) {
                return false;
            }
        }
        return true;
    }

    private long after(int world, long before) {
        long state = before;
        for (int gate : opens) {
            state = board.dice.after(gate, board.problem.gates().get(gate), world, state);
        }
        return board.dice.after(number, act, world, state);
    }

    private int report(int world, long state) {
        int report = 1;
        for (Reader look : looks) {
            report = 2 * report + (look.reports(world, state) ? 1 : 0);
        }
        return report;
    }

    /** One more than the largest report: {@link #LEFT}, or 1 followed by one bit for each look. */
    int reports() {
        return 2 << looks.length;
    }

    /** What was reported, by sign; empty if it was left. */
    Optional<Map<Integer, Boolean>> reported(int ofReport) {
        if (ofReport == LEFT) {
            return Optional.empty();
        }
        Map<Integer, Boolean> answers = new LinkedHashMap<>();
        for (int l = 0; l < looks.length; l++) {
            answers.put(looks[l].sign(), (ofReport >>> looks.length - 1 - l & 1) == 1);
        }
        return Optional.of(answers);
    }

    /** What it costs itself in a world of this report. */
    double own(int ofReport) {
        return ofReport == LEFT ? asking : asking + act.cost();
    }

    /** What opening for it costs. */
    double opening() {
        return opening;
    }

    /** What it costs altogether in a world of this report. */
    double cost(int ofReport) {
        return ofReport == LEFT ? asking : asking + act.cost() + opening;
    }

    long opens() {
        return toOpen;
    }
}
