package hingewise.decision;

import java.util.Arrays;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One act with certain gates still to be opened for it, and what it does in each world. What it does to a world that
 * nothing was done to yet is kept, and so is the last of what it does otherwise: the same is looked at again and again.
 */
final class Move {
    /** The report of an act that was left because a need was not met. */
    static final int LEFT = 0;

    private static final byte UNKNOWN = -1;

    private final Board board;
    private final int number;
    private final Act act;
    private final long toOpen;
    private final int[] opens;
    private final Reader[] needs;
    private final Reader[] looks;
    private final double asking;
    private final double opening;
    private final byte[] reports;
    private final int[] states;
    private final int[] lastBefore;
    private final long[] lastResult;

    /** A look and the worlds in which it reports. */
    private record Reader(int sign, boolean answer, BitSet ifShown, BitSet ifNot) {
        boolean reports(Worlds worlds, int world, long state) {
            return (worlds.shows(sign, world, state) ? ifShown : ifNot).get(world);
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
        this.reports = new byte[board.worlds.count()];
        this.states = new int[reports.length];
        this.lastBefore = new int[reports.length];
        this.lastResult = new long[reports.length];
        Arrays.fill(lastBefore, UNKNOWN);
        Arrays.fill(reports, UNKNOWN);
    }

    private Reader reader(Look look, boolean answer) {
        return new Reader(look.sign(), answer, board.dice.ifShown(look), board.dice.ifNot(look));
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

    /** Report and state after it in a world: the report in the upper half, the number of the state in the lower. */
    long in(int world, int before) {
        if (before != board.drawn(world)) {
            if (lastBefore[world] != before) {
                lastResult[world] = reckoned(world, before);
                lastBefore[world] = before;
            }
            return lastResult[world];
        }
        if (reports[world] == UNKNOWN) {
            long result = reckoned(world, before);
            reports[world] = (byte) report(result);
            states[world] = state(result);
            return result;
        }
        return (long) reports[world] << 32 | states[world];
    }

    static int report(long result) {
        return (int) (result >>> 32);
    }

    static int state(long result) {
        return (int) result;
    }

    private long reckoned(int world, int before) {
        long x = board.states.state(before);
        for (Reader need : needs) {
            if (need.reports(board.worlds, world, x) != need.answer()) {
                return (long) LEFT << 32 | before;
            }
        }
        long y = x;
        for (int gate : opens) {
            y = board.dice.after(gate, board.problem.gates().get(gate), world, y);
        }
        y = board.dice.after(number, act, world, y);
        int code = 1;
        for (Reader look : looks) {
            code = 2 * code + (look.reports(board.worlds, world, y) ? 1 : 0);
        }
        return (long) code << 32 | (y == x ? before : board.states.number(y));
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
