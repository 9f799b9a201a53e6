package hingewise.costing;

import hingewise.costing.PurchaseProblem.Bid;
import hingewise.costing.PurchaseProblem.Item;
import hingewise.costing.PurchaseProblem.Terms;
import hingewise.rulebook.Access;
import hingewise.rulebook.Part;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.joda.money.Money;

/**
 * Finds the cheapest parts that renew some components: goods, suppliers' shipping and minimum orders, the risk of bad
 * parts, what buyers pay less for their origin, work, and the days until the phone is complete. Exact. One piece of each
 * part is needed; consumables come once.
 */
public final class Purchasing {
    private final RepairCosts costs;
    private final Set<String> open;

    /** @param open the access states that are open already */
    public Purchasing(RepairCosts costs, Set<String> open) {
        this.costs = costs;
        this.open = Set.copyOf(open);
    }

    /**
     * The cheapest way to renew these components; those that no part renews are left out.
     *
     * @param components in the order in which the parts are to be listed
     */
    public Purchase cheapest(Collection<String> components) {
        return within(components, Integer.MAX_VALUE, o -> true)
                .orElseThrow(() -> new IllegalStateException("without a limit there is always a way"));
    }

    /**
     * Another way to buy the same: the cheapest that is complete sooner; if there is none, the one for which least is
     * paid, if that is less; if it is not, the cheapest without the dearest offer.
     */
    public Optional<Purchase> runnerUp(Collection<String> components, Purchase chosen) {
        Predicate<Purchase> complete = p -> p.missing() <= chosen.missing();
        return within(components, chosen.days() - 1, o -> true)
                .filter(complete)
                .or(() -> leastPaid(components)
                        .filter(complete)
                        .filter(p -> p.paid().isLessThan(chosen.paid())))
                .or(() -> dearest(chosen)
                        .flatMap(d -> within(components, Integer.MAX_VALUE, o -> !o.equals(d)))
                        .filter(complete));
    }

    private static Optional<Offer> dearest(Purchase purchase) {
        return purchase.lines().stream().flatMap(l -> l.offer().stream()).max(Comparator.comparing(Offer::goods));
    }

    private Optional<Purchase> within(Collection<String> components, int days, Predicate<Offer> allowed) {
        Draft draft = new Draft(components, allowed);
        return PurchaseSearch.cheapest(draft.problem(true), days).map(draft::purchase);
    }

    private Optional<Purchase> leastPaid(Collection<String> components) {
        Draft draft = new Draft(components, o -> true);
        return PurchaseSearch.cheapest(draft.problem(false), Integer.MAX_VALUE).map(draft::purchase);
    }

    /** A purchase put into numbers, and back. */
    private final class Draft {
        private final List<String> needs;
        private final List<Part> parts;
        private final List<List<Offer>> offers;
        private final List<Access> steps;
        private final List<String> suppliers;

        Draft(Collection<String> components, Predicate<Offer> allowed) {
            needs = components.stream().distinct().toList();
            Set<Part> wanted = new LinkedHashSet<>();
            needs.forEach(n -> costs.partsRenewing(n).forEach(p -> wanted.addAll(costs.bundle(p))));
            parts = List.copyOf(wanted);
            offers = parts.stream()
                    .map(p -> costs.offers(p.id()).stream().filter(allowed).toList())
                    .toList();
            steps = parts.stream()
                    .flatMap(p -> costs.stepsTo(p.access(), open).stream())
                    .distinct()
                    .toList();
            suppliers = offers.stream()
                    .flatMap(List::stream)
                    .map(Offer::supplier)
                    .filter(costs.shop().suppliers()::containsKey)
                    .distinct()
                    .toList();
        }

        /** @param all whether anything but what is paid counts */
        PurchaseProblem problem(boolean all) {
            List<Item> items = new ArrayList<>();
            for (int i = 0; i < parts.size(); i++) {
                Part part = parts.get(i);
                items.add(new Item(
                        numbers(part.renews(), needs),
                        numbers(costs.bundle(part), parts),
                        minor(costs.labour(part.minutes())),
                        numbers(costs.stepsTo(part.access(), open), steps),
                        offers.get(i).stream().map(o -> bid(o, all)).toList()));
            }
            return new PurchaseProblem(
                    needs.size(),
                    items,
                    suppliers.stream().map(this::terms).toList(),
                    steps.stream().map(s -> minor(costs.opening(s))).toList(),
                    all ? minor(costs.perDay()) : 0);
        }

        private Terms terms(String supplier) {
            return Optional.ofNullable(costs.shop().suppliers().get(supplier))
                    .map(s -> new Terms(minor(s.shipping()), minor(s.minimumOrder())))
                    .orElseThrow();
        }

        private Bid bid(Offer offer, boolean all) {
            long extra = all ? minor(costs.risk(offer).plus(costs.lessResale(offer))) : 0;
            return new Bid(suppliers.indexOf(offer.supplier()), minor(offer.goods()), extra, offer.days());
        }

        Purchase purchase(PurchaseSearch.Found found) {
            List<Purchase.Line> lines = new ArrayList<>();
            for (int n = 0; n < found.items().size(); n++) {
                int bid = found.bids().get(n);
                List<Offer> of = offers.get(found.items().get(n));
                lines.add(new Purchase.Line(
                        parts.get(found.items().get(n)), bid < 0 ? Optional.empty() : Optional.of(of.get(bid))));
            }
            return costs.purchase(listed(lines), open);
        }

        /** In the order of the components, each part followed by what it needs that is not there yet. */
        private List<Purchase.Line> listed(List<Purchase.Line> lines) {
            Set<Part> order = new LinkedHashSet<>();
            for (String need : needs) {
                lines.stream()
                        .map(Purchase.Line::part)
                        .filter(p -> p.renews().contains(need))
                        .findFirst()
                        .ifPresent(p -> order.addAll(costs.bundle(p)));
            }
            List<Part> listed = List.copyOf(order);
            return lines.stream()
                    .sorted(Comparator.comparingInt(l -> listed.indexOf(l.part())))
                    .toList();
        }

        private <T> BitSet numbers(Collection<T> some, List<T> all) {
            BitSet numbers = new BitSet();
            some.stream().map(all::indexOf).filter(i -> i >= 0).forEach(numbers::set);
            return numbers;
        }

        private static long minor(Money money) {
            return money.getAmountMinorLong();
        }
    }
}
