package hingewise.decision;

import java.util.Arrays;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * One act with certain gates still to be opened for it, and what it does in each situation, which is kept: the same is
 * looked at again and again. Situations of one half of the worlds with the same report and state after it are one result.
 */
final class Move {
    /** The report of an act that was left because a need was not met. */
    static final int LEFT = 0;

    private final Board board;
    private final int number;
    private final Act act;
    private final long toOpen;
    private final int[] opens;
    private final Reader[] needs;
    private final Reader[] looks;
    private final double asking;
    private final double opening;
    private final Numbering results = new Numbering();
    /** By situation the number of its result and 1; 0 if it is not reckoned yet. */
    private int[] resultOf = {};

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

    /** The number of what comes of it in each situation of a lot. */
    int[] results(Lot lot) {
        makeRoom();
        return IntStream.of(lot.situations()).map(this::result).toArray();
    }

    /** Counts what comes of it in the situations of a lot. */
    void count(Lot lot, Tally tally) {
        makeRoom();
        for (int situation : lot.situations()) {
            tally.add(result(situation));
        }
    }

    private void makeRoom() {
        if (resultOf.length < board.situations.count()) {
            resultOf = Arrays.copyOf(resultOf, Math.max(board.situations.count(), 2 * resultOf.length));
        }
    }

    private int result(int situation) {
        int known = resultOf[situation];
        return known == 0 ? reckoned(situation) : known - 1;
    }

    /** What is reported in a result. */
    int report(int result) {
        return (int) (results.key(result) >>> 33);
    }

    /** The half of the worlds that a result is of. */
    int half(int result) {
        return (int) (results.key(result) >>> 32) & 1;
    }

    /** The number of the state after it. */
    int state(int result) {
        return (int) results.key(result);
    }

    private int reckoned(int situation) {
        int world = board.situations.world(situation);
        int before = board.situations.state(situation);
        long x = board.states.state(before);
        long y = x;
        int report = LEFT;
        if (isDone(world, x)) {
            y = after(world, x);
            report = report(world, y);
        }
        int state = y == x ? before : board.states.number(y);
        int result = results.number((2L * report + Board.half(world)) << 32 | state);
        resultOf[situation] = result + 1;
        return result;
    }

    private boolean isDone(int world, long state) {
        for (Reader need : needs) {
            if (need.reports(board.worlds, world, state) != need.answer()) {
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
            report = 2 * report + (look.reports(board.worlds, world, state) ? 1 : 0);
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
