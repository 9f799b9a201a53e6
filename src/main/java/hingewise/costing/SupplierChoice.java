package hingewise.costing;

import hingewise.costing.PurchaseProblem.Bid;
import hingewise.costing.PurchaseProblem.Item;
import hingewise.costing.PurchaseProblem.Terms;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;

/**
 * From whom to buy items that are settled, at the least sum of goods, extras, shipping and what is missing to a minimum
 * order. Exact: suppliers are taken in or left out by branch and bound, and once that is settled each item takes its
 * cheapest bid, unless a minimum order makes a dearer one worth while; then all sums below the minimum are weighed.
 */
final class SupplierChoice {
    /**
     * One way to buy them.
     *
     * @param bids the number of the bid of each item; -1 for an item without bids
     */
    record Choice(List<Integer> bids, long cost) {}

    private record Partial(long cost, List<Integer> bids) {}

    private final List<Terms> terms;
    private final List<Item> items;
    private final int days;
    private final List<Integer> asked;
    private final boolean[] allowed;
    private long least;
    private Optional<Choice> best = Optional.empty();

    private SupplierChoice(List<Terms> terms, List<Item> items, int days, long below) {
        this.terms = terms;
        this.items = items;
        this.days = days;
        this.least = below;
        this.allowed = new boolean[terms.size()];
        TreeSet<Integer> suppliers = new TreeSet<>();
        items.forEach(i -> i.bids().stream()
                .filter(b -> b.supplier() != PurchaseProblem.NO_TERMS)
                .forEach(b -> suppliers.add(b.supplier())));
        suppliers.forEach(s -> allowed[s] = true);
        this.asked = List.copyOf(suppliers);
    }

    /**
     * The cheapest way; empty where there is none below a cost.
     *
     * @param days only bids that arrive within so many
     */
    static Optional<Choice> cheapest(List<Terms> terms, List<Item> items, int days, long below) {
        SupplierChoice search = new SupplierChoice(terms, items, days, below);
        search.decide(0, 0);
        return search.best;
    }

    private void decide(int next, long shipping) {
        List<Integer> bids = new ArrayList<>();
        long cost = shipping;
        for (Item item : items) {
            int bid = cheapestOf(item);
            if (bid < 0 && !item.bids().isEmpty()) {
                return;
            }
            bids.add(bid);
            cost += bid < 0 ? 0 : item.bids().get(bid).cost();
        }
        if (cost >= least) {
            return;
        }
        if (next == asked.size()) {
            settle(bids, cost, shipping);
            return;
        }
        int supplier = asked.get(next);
        decide(next + 1, shipping + terms.get(supplier).shipping());
        allowed[supplier] = false;
        decide(next + 1, shipping);
        allowed[supplier] = true;
    }

    private boolean open(Bid bid) {
        return bid.days() <= days && (bid.supplier() == PurchaseProblem.NO_TERMS || allowed[bid.supplier()]);
    }

    private int cheapestOf(Item item) {
        int cheapest = -1;
        for (int i = 0; i < item.bids().size(); i++) {
            if (open(item.bids().get(i))
                    && (cheapest < 0
                            || item.bids().get(i).cost()
                                    < item.bids().get(cheapest).cost())) {
                cheapest = i;
            }
        }
        return cheapest;
    }

    private void settle(List<Integer> bids, long cost, long shipping) {
        List<Integer> minima = asked.stream()
                .filter(s -> allowed[s] && terms.get(s).minimum() > 0)
                .toList();
        Map<List<Long>, Partial> states = new HashMap<>();
        states.put(minima.stream().map(s -> 0L).toList(), new Partial(shipping, List.of()));
        long toCome = cost - shipping;
        boolean reached =
                minima.stream().allMatch(s -> goods(bids, s) >= terms.get(s).minimum());
        if (reached) {
            take(new Choice(List.copyOf(bids), cost));
            return;
        }
        for (int i = 0; i < items.size(); i++) {
            Item item = items.get(i);
            toCome -= bids.get(i) < 0 ? 0 : item.bids().get(bids.get(i)).cost();
            Map<List<Long>, Partial> after = new HashMap<>();
            for (Map.Entry<List<Long>, Partial> state : states.entrySet()) {
                if (item.bids().isEmpty()) {
                    keep(after, state.getKey(), with(state.getValue(), -1, 0));
                }
                for (int b = 0; b < item.bids().size(); b++) {
                    Bid bid = item.bids().get(b);
                    if (open(bid) && state.getValue().cost() + bid.cost() + toCome < least) {
                        keep(after, more(state.getKey(), minima, bid), with(state.getValue(), b, bid.cost()));
                    }
                }
            }
            states = after;
        }
        states.forEach((sums, partial) -> {
            long total = partial.cost();
            for (int m = 0; m < minima.size(); m++) {
                total += terms.get(minima.get(m)).minimum() - sums.get(m);
            }
            take(new Choice(partial.bids(), total));
        });
    }

    private void take(Choice choice) {
        if (choice.cost() < least) {
            least = choice.cost();
            best = Optional.of(choice);
        }
    }

    private long goods(List<Integer> bids, int supplier) {
        long sum = 0;
        for (int i = 0; i < items.size(); i++) {
            if (bids.get(i) >= 0 && items.get(i).bids().get(bids.get(i)).supplier() == supplier) {
                sum += items.get(i).bids().get(bids.get(i)).goods();
            }
        }
        return sum;
    }

    /** Sums of goods by supplier; what goes beyond the minimum makes no difference any more. */
    private List<Long> more(List<Long> sums, List<Integer> minima, Bid bid) {
        int m = minima.indexOf(bid.supplier());
        if (m < 0) {
            return sums;
        }
        List<Long> more = new ArrayList<>(sums);
        more.set(m, Math.min(terms.get(bid.supplier()).minimum(), sums.get(m) + bid.goods()));
        return more;
    }

    private static Partial with(Partial partial, int bid, long cost) {
        List<Integer> bids = new ArrayList<>(partial.bids());
        bids.add(bid);
        return new Partial(partial.cost() + cost, List.copyOf(bids));
    }

    private static void keep(Map<List<Long>, Partial> states, List<Long> sums, Partial partial) {
        states.merge(sums, partial, (a, b) -> b.cost() < a.cost() ? b : a);
    }
}
