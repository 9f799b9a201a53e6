package hingewise.costing;

import hingewise.costing.PurchaseProblem.Item;
import hingewise.costing.SupplierChoice.Choice;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The cheapest purchase that covers every need that can be covered. Exact: branch and bound. At each turn the need with
 * the fewest items left is covered by each of them; an item that was tried is excluded from what follows, so that no set
 * of items is met twice. A purchase with fewer items that nobody sells comes before every cheaper one.
 */
final class PurchaseSearch {
    private static final double ROUNDING = 1e-9;
    /** Dearer than anything that is sold: amounts stay below it by the limits of the price book. */
    private static final long MISSING = 10_000_000_000_000_000L;

    /**
     * What to buy.
     *
     * @param items their numbers, each followed by what it needs that is not there yet
     * @param bids the number of the bid of each; -1 where nobody sells it
     * @param days until the last is there
     * @param cost all together, waiting among it; items nobody sells at nothing
     */
    record Found(List<Integer> items, List<Integer> bids, int days, long cost) {}

    private final PurchaseProblem problem;
    private final List<BitSet> covering = new ArrayList<>();
    private final double[] share;
    private final long[] leastGoods;
    private final BitSet late = new BitSet();
    private int days;
    private long least = Long.MAX_VALUE;
    private Optional<Found> best = Optional.empty();

    private PurchaseSearch(PurchaseProblem problem) {
        this.problem = problem;
        this.share = new double[problem.needs()];
        this.leastGoods = new long[problem.items().size()];
        for (int n = 0; n < problem.needs(); n++) {
            covering.add(new BitSet());
        }
        for (int i = 0; i < problem.items().size(); i++) {
            int item = i;
            problem.items().get(i).covers().stream()
                    .forEach(n -> covering.get(n).set(item));
        }
    }

    /**
     * The cheapest purchase; empty where none is complete in time.
     *
     * @param withinDays how long may be waited for the last item
     */
    static Optional<Found> cheapest(PurchaseProblem problem, int withinDays) {
        if (withinDays < 0) {
            return Optional.empty();
        }
        PurchaseSearch search = new PurchaseSearch(problem);
        List<Integer> waits = Stream.concat(
                        Stream.of(0),
                        problem.items().stream().flatMap(i -> i.bids().stream()).map(PurchaseProblem.Bid::days))
                .filter(d -> d <= withinDays)
                .distinct()
                .sorted()
                .toList();
        // Where waiting costs nothing the longest wait allows for all the others.
        int first = problem.perDay() > 0 ? 0 : waits.size() - 1;
        waits.subList(first, waits.size()).forEach(search::within);
        return search.best;
    }

    private void within(int wait) {
        days = wait;
        late.clear();
        Arrays.fill(share, Double.POSITIVE_INFINITY);
        BitSet needs = new BitSet();
        for (int i = 0; i < leastGoods.length; i++) {
            Item item = problem.items().get(i);
            OptionalLong goods = item.bids().stream()
                    .filter(b -> b.days() <= wait)
                    .mapToLong(PurchaseProblem.Bid::cost)
                    .min();
            leastGoods[i] = goods.orElse(0);
            late.set(i, goods.isEmpty() && !item.bids().isEmpty());
            double each = (double) (leastGoods[i] + item.work())
                    / Math.max(1, item.covers().cardinality());
            item.covers().stream().forEach(n -> share[n] = Math.min(share[n], each));
            needs.or(item.covers());
        }
        BitSet excluded = new BitSet();
        for (int i = 0; i < leastGoods.length; i++) {
            excluded.set(i, problem.items().get(i).bundle().intersects(late));
        }
        search(needs, List.of(), new BitSet(), 0, excluded);
    }

    /**
     * @param need what is not covered yet
     * @param bought the items so far, in order
     * @param opened the steps of opening so far
     * @param fixed work, steps and missing items so far
     * @param excluded items that are not to be bought any more
     */
    private void search(BitSet need, List<Integer> bought, BitSet opened, long fixed, BitSet excluded) {
        long goods = bought.stream().mapToLong(i -> leastGoods[i]).sum();
        if (fixed + goods + days * problem.perDay() + atLeast(need, excluded) >= least) {
            return;
        }
        if (need.isEmpty()) {
            settle(bought, fixed);
            return;
        }
        BitSet choices = fewest(need, excluded);
        BitSet tried = (BitSet) excluded.clone();
        for (int i = choices.nextSetBit(0); i >= 0; i = choices.nextSetBit(i + 1)) {
            if (!problem.items().get(i).bundle().intersects(tried)) {
                buy(i, need, bought, opened, fixed, tried);
            }
            tried.set(i);
        }
    }

    private void buy(int chosen, BitSet need, List<Integer> bought, BitSet opened, long fixed, BitSet excluded) {
        List<Integer> more = new ArrayList<>(bought);
        BitSet left = (BitSet) need.clone();
        BitSet open = (BitSet) opened.clone();
        long cost = fixed;
        for (int i : inOrder(chosen)) {
            if (!more.contains(i)) {
                Item item = problem.items().get(i);
                more.add(i);
                left.andNot(item.covers());
                open.or(item.opens());
                cost += item.work() + (item.missing() ? MISSING : 0);
            }
        }
        for (int step = open.nextSetBit(0); step >= 0; step = open.nextSetBit(step + 1)) {
            cost += opened.get(step) ? 0 : problem.steps().get(step);
        }
        search(left, more, open, cost, excluded);
    }

    private List<Integer> inOrder(int chosen) {
        return IntStream.concat(
                        IntStream.of(chosen),
                        problem.items().get(chosen).bundle().stream().filter(i -> i != chosen))
                .boxed()
                .toList();
    }

    /** The items left for the need that has fewest. */
    private BitSet fewest(BitSet need, BitSet excluded) {
        BitSet fewest = new BitSet();
        int count = Integer.MAX_VALUE;
        for (int n = need.nextSetBit(0); n >= 0 && count > 0; n = need.nextSetBit(n + 1)) {
            BitSet left = (BitSet) covering.get(n).clone();
            left.andNot(excluded);
            if (left.cardinality() < count) {
                count = left.cardinality();
                fewest = left;
            }
        }
        return fewest;
    }

    /**
     * What covering the rest costs at least: the shares of each need in the item that serves it most cheaply, or the
     * cheapest items of needs that have none in common.
     */
    private long atLeast(BitSet need, BitSet excluded) {
        double shares = 0;
        long apart = 0;
        BitSet counted = new BitSet();
        for (int n = need.nextSetBit(0); n >= 0; n = need.nextSetBit(n + 1)) {
            shares += share[n];
            BitSet left = (BitSet) covering.get(n).clone();
            left.andNot(excluded);
            if (!left.intersects(counted)) {
                apart += left.stream()
                        .mapToLong(i -> leastGoods[i] + problem.items().get(i).work())
                        .min()
                        .orElse(0);
                counted.or(left);
            }
        }
        return Math.max(apart, (long) Math.ceil(shares * (1 - ROUNDING) - ROUNDING));
    }

    private void settle(List<Integer> bought, long fixed) {
        long waiting = days * problem.perDay();
        List<Item> items = bought.stream().map(problem.items()::get).toList();
        Optional<Choice> choice = SupplierChoice.cheapest(problem.suppliers(), items, days, least - fixed - waiting);
        choice.ifPresent(c -> {
            int wait = IntStream.range(0, items.size())
                    .filter(i -> c.bids().get(i) >= 0)
                    .map(i -> items.get(i).bids().get(c.bids().get(i)).days())
                    .max()
                    .orElse(0);
            least = fixed + waiting + c.cost();
            long missing = items.stream().filter(Item::missing).count();
            best = Optional.of(new Found(bought, c.bids(), wait, least - missing * MISSING));
        });
    }
}
