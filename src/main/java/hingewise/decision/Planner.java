package hingewise.decision;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Finds what to do first. Every act is judged alone and every promising one with each other that may follow it; the best
 * of them are followed further ({@link Search}).
 */
public final class Planner {
    /** Worlds drawn to plan with. */
    public static final int WORLDS = 2048;

    /** Acts that are paired with each other. */
    private static final int PAIRED = 12;
    /** Acts with which it is reckoned what the whole case costs: those that save most with one other after them. */
    private static final int FOLLOWED = 8;
    /** Worlds in which it is reckoned what knowing everything would save. */
    private static final int KNOWN = 512;
    /** Share of what deciding now costs that going on must save: less may well be chance. */
    private static final double LEAST = .005;
    /** Share by which costs of the whole case may differ by chance: of such acts one that saves much itself comes first. */
    private static final double NEAR = .01;
    /**
     * Share by which a case may cost more with an act than with the best, a simple order being followed after both, for
     * the act to be followed further: of the acts of 483 cases that made one in a hundred cheaper by more than 1.2 %.
     */
    private static final double FURTHER = .02;
    /** Share of what a case costs that two acts must save more together before they count as a pair. */
    private static final double SYNERGY = 1e-3;

    private final Board board;
    private final Lot now;

    private Planner(Board board, Lot now) {
        this.board = board;
        this.now = now;
    }

    /**
     * @param open gates that are open (one bit each)
     * @param seed of the throws that acts depend on
     */
    public static Prospect prospect(Problem problem, Worlds worlds, long open, long seed) {
        Board board = new Board(problem, worlds, seed);
        return new Planner(board, board.all(open)).prospect();
    }

    /**
     * What to do, and after each report what then. What is less likely than the least chance is not looked into.
     *
     * @param open gates that are open (one bit each)
     * @param seed of the throws that acts depend on
     * @param leastChance in 0–1
     */
    public static Policy policy(Problem problem, Worlds worlds, long open, long seed, double leastChance) {
        Board board = new Board(problem, worlds, seed);
        return policy(board, board.all(open), leastChance);
    }

    /**
     * What a case would cost if at every moment the causes were known. Nothing is looked at, and acts and openings are
     * taken to harm nothing, so no policy can be expected to cost less.
     *
     * @param state the causes that are there (one bit each)
     */
    public static double knowing(Problem problem, long state) {
        return new Certainty(problem).cost(state, 0);
    }

    private static Policy policy(Board board, Lot lot, double leastChance) {
        double chance = (double) lot.size() / board.worlds.count();
        if (chance < leastChance) {
            return new Policy.Unplanned(chance, board.end(lot) / lot.size(), board.best(lot));
        }
        Optional<Option> first = new Planner(board, lot).weighed().first();
        if (first.isEmpty()) {
            return new Policy.Decide(chance, board.end(lot) / lot.size(), board.best(lot));
        }
        int act = first.get().act();
        Move move = board.move(act, lot);
        Lot[] lots = board.split(lot, act);
        List<Policy.Branch> branches = new ArrayList<>();
        double expected = 0;
        for (int r = 0; r < lots.length; r++) {
            if (lots[r].size() > 0) {
                Policy next = policy(board, lots[r], leastChance);
                branches.add(new Policy.Branch(move.reported(r), move.cost(r), next));
                expected += next.chance() / chance * (move.cost(r) + next.expected());
            }
        }
        return new Policy.Do(chance, expected, act, move.opens(), branches);
    }

    private Prospect prospect() {
        Weighed weighed = weighed();
        double stop = board.end(now) / now.size();
        double plan = weighed.first().map(Option::whole).orElse(stop);
        return new Prospect(
                board.best(now),
                stop,
                plan,
                Math.min(plan, known(stop)),
                error(),
                weighed.options(),
                weighed.first().isPresent());
    }

    /**
     * What can be done.
     *
     * @param options what is to be done first at the head, if anything is
     */
    private record Weighed(List<Option> options, Optional<Option> first) {}

    private Weighed weighed() {
        double stop = board.end(now);
        long picked = picked(stop);
        double scale = search(picked, 0).simply(now) / now.size();
        List<Saving> savings = search(-1L, scale).savings(now, stop);
        List<Saving> paired =
                savings.stream().filter(s -> (picked >>> s.act() & 1) != 0).toList();
        Search search = search(picked, scale);
        Map<Integer, Pair> pairs = new HashMap<>();
        paired.forEach(s -> pairs.put(s.act(), pair(search, s, paired, SYNERGY * scale * now.size())));
        Map<Integer, Double> whole = whole(search, paired, pairs);
        savingMoreThanBest(whole, paired)
                .forEach((act, next) -> whole.merge(act, search.afterBoth(now, act, next), Math::min));
        double n = now.size();
        List<Option> options = new ArrayList<>();
        for (Saving s : savings) {
            Pair pair = pairs.getOrDefault(s.act(), Pair.NONE);
            double anyway = s.opening() == 0
                    ? 0
                    : board.paidAnyway(now, s.opens()) * s.opening() / board.problem.opening(s.opens()) / n;
            boolean alone = s.net() > 0 || pair.second() == Option.ALONE;
            options.add(new Option(
                    s.act(),
                    s.gross() / n - anyway,
                    s.cost() / n - anyway,
                    alone ? Option.ALONE : pair.second(),
                    (alone ? s.net() : pair.net()) / n,
                    board.information(now, s.act()),
                    whole.getOrDefault(s.act(), Double.POSITIVE_INFINITY) / n));
        }
        options.sort(Comparator.comparingDouble((Option o) -> Saving.coarse(o.net()))
                .reversed()
                .thenComparing(Option::act));
        Optional<Option> first = first(options, saving(paired, pairs), stop / n);
        first.ifPresent(o -> {
            options.remove(o);
            options.add(0, o);
        });
        return new Weighed(options, first);
    }

    /** The acts (one bit each) that save most; where no cure makes the best decision better, those that do for others. */
    private long picked(double stop) {
        Search all = search(-1L, 0);
        return picked(
                board.leavesAllBehind(now)
                        ? all.savings(now, board.end(now, Choice.Among.CONCERNED), Choice.Among.CONCERNED)
                        : all.savings(now, stop));
    }

    private Search search(long acts, double scale) {
        long all = board.problem.acts().isEmpty()
                ? 0
                : -1L >>> 64 - board.problem.acts().size();
        return new Search(board, acts & all, scale);
    }

    /** What the whole case costs with the acts that save most with one other after them. */
    private Map<Integer, Double> whole(Search search, List<Saving> paired, Map<Integer, Pair> pairs) {
        Map<Integer, Double> whole = new HashMap<>();
        paired.stream()
                .map(Saving::act)
                .sorted(Comparator.comparingDouble((Integer a) ->
                                -Saving.coarse(pairs.getOrDefault(a, Pair.NONE).withAny()))
                        .thenComparing(a -> a))
                .limit(FOLLOWED)
                .forEach(a -> whole.put(a, search.after(now, a)));
        double least = whole.values().stream().mapToDouble(w -> w).min().orElse(0);
        whole.replaceAll((a, simply) -> simply <= least * (1 + FURTHER) ? search.further(now, a) : simply);
        return whole;
    }

    /** Of acts that were followed those that save more by themselves than the one with which the case costs least; that one. */
    private static Map<Integer, Integer> savingMoreThanBest(Map<Integer, Double> whole, List<Saving> savings) {
        Map<Integer, Double> net = savings.stream().collect(Collectors.toMap(Saving::act, Saving::net));
        return whole.entrySet().stream()
                .min(Map.Entry.<Integer, Double>comparingByValue().thenComparing(Map.Entry.comparingByKey()))
                .map(Map.Entry::getKey)
                .map(best -> whole.keySet().stream()
                        .filter(a -> net.getOrDefault(a, 0.0) > Math.max(0, net.getOrDefault(best, 0.0)))
                        .collect(Collectors.toMap(a -> a, a -> best)))
                .orElse(Map.of());
    }

    /** The acts that save something alone or with one other. */
    private static Set<Integer> saving(List<Saving> paired, Map<Integer, Pair> pairs) {
        double alone = paired.stream().mapToDouble(Saving::net).max().orElse(0);
        return paired.stream()
                .filter(s -> {
                    Pair pair = pairs.getOrDefault(s.act(), Pair.NONE);
                    return s.any() || pair.second() != Option.ALONE || pair.withAny() > alone + s.least();
                })
                .map(Saving::act)
                .collect(Collectors.toSet());
    }

    /**
     * What to do first, if anything: of acts after which the whole case costs about least one that saves much itself. One
     * that by itself and in pairs saves nothing has to make the case clearly cheaper: slightly, it may do so by chance.
     */
    private static Optional<Option> first(List<Option> options, Set<Integer> saving, double stop) {
        double least = options.stream()
                .filter(o -> saving.contains(o.act()))
                .mapToDouble(Option::whole)
                .min()
                .orElse(Double.POSITIVE_INFINITY);
        double clearly = Math.min(least, stop) * (1 - LEAST);
        return options.stream()
                .filter(o -> o.whole() < clearly && !saving.contains(o.act()))
                .min(Comparator.comparingDouble((Option o) -> Saving.coarse(o.whole()))
                        .thenComparing(Option::act))
                .or(() -> options.stream()
                        .filter(o -> saving.contains(o.act()) && o.whole() < stop * (1 - LEAST))
                        .filter(o -> o.whole() <= least * (1 + NEAR))
                        .max(Comparator.comparingDouble(
                                        (Option o) -> Saving.coarse(o.gross() - o.cost() / 2 - o.whole()))
                                .thenComparing(Option::act, Comparator.reverseOrder()))
                        .map(o -> before(o, options, least)));
    }

    /** Before what is only worth doing with another comes what is worth doing alone, if the whole costs about the same. */
    private static Option before(Option first, List<Option> options, double least) {
        return first.with() == Option.ALONE
                ? first
                : options.stream()
                        .filter(o -> o.with() == Option.ALONE && o.net() > 0)
                        .filter(o -> o.whole() <= least * (1 + 2 * NEAR))
                        .max(Comparator.comparingDouble(
                                        (Option o) -> Saving.coarse(o.gross() - o.cost() / 2 - o.whole()))
                                .thenComparing(Option::act, Comparator.reverseOrder()))
                        .orElse(first);
    }

    /** The acts (one bit each) that save most alone or for their cost. */
    private static long picked(List<Saving> savings) {
        if (savings.size() <= PAIRED) {
            return bits(savings.stream());
        }
        long most = bits(savings.stream()
                .sorted(Comparator.comparingDouble((Saving s) -> Saving.coarse(s.net()))
                        .reversed())
                .limit(PAIRED / 2));
        return most
                | bits(savings.stream()
                        .sorted(Comparator.comparingDouble(s -> Saving.coarse(-Saving.efficiency(s.gross(), s.cost()))))
                        .filter(s -> (most >>> s.act() & 1) == 0)
                        .limit(PAIRED - PAIRED / 2));
    }

    private static long bits(Stream<Saving> savings) {
        return savings.mapToLong(s -> 1L << s.act()).reduce(0, (a, b) -> a | b);
    }

    /**
     * An act followed by one other or none, as its report says.
     *
     * @param withAny net saving when the other is chosen by the report
     * @param second the one other act that it is worth more with than that one is without it, or {@link Option#ALONE}
     * @param net net saving with that one
     */
    private record Pair(double withAny, int second, double net) {
        static final Pair NONE = new Pair(0, Option.ALONE, 0);
    }

    private Pair pair(Search search, Saving first, List<Saving> paired, double synergy) {
        double any = first.net();
        Map<Integer, Double> more = new HashMap<>();
        for (Lot lot : board.split(now, first.act())) {
            if (lot.size() > 0) {
                double best = 0;
                for (Saving s : search.savings(lot, board.end(lot))) {
                    if (s.any() && s.net() > 0) {
                        best = Math.max(best, s.net());
                        more.merge(s.act(), s.net(), Double::sum);
                    }
                }
                any += best;
            }
        }
        int second = Option.ALONE;
        double most = synergy;
        for (Saving other : paired) {
            double together = first.net() + more.getOrDefault(other.act(), 0.0) - Math.max(0, other.net());
            if (other.act() != first.act() && Saving.more(together, most)) {
                most = together;
                second = other.act();
            }
        }
        return new Pair(any, second, first.net() + more.getOrDefault(second, 0.0));
    }

    /**
     * What it would cost if the causes were known. How much that saves is reckoned in a share of the worlds, against the
     * best decision in the same ones: a bound that is shown, and nothing is chosen by it.
     */
    private double known(double stop) {
        Certainty certainty = new Certainty(board.problem, board.states, board.choices);
        int ending = board.best(now);
        int some = Math.min(KNOWN, now.size());
        double saved = board.problem.opening(board.problem.endings().get(ending).opens() & ~now.open());
        for (int i = 0; i < some; i++) {
            int state = board.situations.state(i);
            saved +=
                    (board.states.losses(state)[ending] - certainty.cost(board.states.state(state), now.open())) / some;
        }
        return stop - saved;
    }

    private double error() {
        int ending = board.best(now);
        double sum = 0;
        double squares = 0;
        for (int i = 0; i < now.size(); i++) {
            double loss = board.states.losses(board.situations.state(i))[ending];
            sum += loss;
            squares += loss * loss;
        }
        double n = now.size();
        return Math.sqrt(Math.max(0, squares / n - sum / n * (sum / n)) / n);
    }
}
